-- What a club noted from the film of a game, as the rows of games.csv and rallies.csv. For that club alone.
CREATE TABLE private_films (
  club VARCHAR(40) NOT NULL,
  game VARCHAR(40) NOT NULL,
  about VARCHAR(4000) NOT NULL,
  rallies CLOB NOT NULL,
  CONSTRAINT pk_private_films PRIMARY KEY (club, game)
);
