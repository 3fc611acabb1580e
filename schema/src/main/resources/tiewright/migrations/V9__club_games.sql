-- Earlier games that a club keeps for itself, beside those that everybody's ratings rest on. Numbered within the club, so that a
-- number tells nothing of what other clubs keep.
CREATE TABLE private_club_game (
  club VARCHAR(40) NOT NULL,
  number INTEGER NOT NULL,
  played_on DATE NOT NULL,
  home_1 VARCHAR(200) NOT NULL,
  home_2 VARCHAR(200) NOT NULL,
  away_1 VARCHAR(200) NOT NULL,
  away_2 VARCHAR(200) NOT NULL,
  home INTEGER NOT NULL,
  away INTEGER NOT NULL,
  format VARCHAR(60) NOT NULL,
  CONSTRAINT pk_private_club_game PRIMARY KEY (club, number)
);
