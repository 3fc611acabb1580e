-- What a club's advice forecast at the opening of a tie, to be scored afterwards; club-private, without any player.
CREATE TABLE private_forecast (
  tie VARCHAR(40) NOT NULL,
  club VARCHAR(40) NOT NULL,
  part VARCHAR(10) NOT NULL,
  chance DOUBLE PRECISION NOT NULL,
  by_rating INTEGER NOT NULL,
  given_away DOUBLE PRECISION NOT NULL,
  CONSTRAINT pk_private_forecast PRIMARY KEY (tie, club, part)
);
