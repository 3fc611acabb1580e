-- What must be erased on a date, or is private to a club, lies beside the ledger and is erased here.
CREATE TABLE private_person (
  player VARCHAR(40) NOT NULL,
  name VARCHAR(200) NOT NULL,
  born_year INTEGER,
  CONSTRAINT pk_private_person PRIMARY KEY (player)
);

CREATE TABLE private_form (
  player VARCHAR(40) NOT NULL,
  form DOUBLE PRECISION,
  sd DOUBLE PRECISION,
  CONSTRAINT pk_private_form PRIMARY KEY (player)
);

CREATE TABLE private_chemistry (
  player_1 VARCHAR(40) NOT NULL,
  player_2 VARCHAR(40) NOT NULL,
  extra DOUBLE PRECISION NOT NULL,
  sd DOUBLE PRECISION,
  wish VARCHAR(20),
  CONSTRAINT pk_private_chemistry PRIMARY KEY (player_1, player_2),
  CONSTRAINT ck_private_chemistry CHECK (player_1 < player_2)
);

CREATE TABLE private_tie_wish (
  tie VARCHAR(40) NOT NULL,
  club VARCHAR(40) NOT NULL,
  must_play VARCHAR(2000) NOT NULL,
  must_rest VARCHAR(2000) NOT NULL,
  CONSTRAINT pk_private_tie_wish PRIMARY KEY (tie, club)
);

-- A sealed sheet: ciphertext only, one length, the key in a file of its own.
CREATE TABLE private_sheet (
  tie VARCHAR(40) NOT NULL,
  kind VARCHAR(20) NOT NULL,
  club VARCHAR(40) NOT NULL,
  nonce VARCHAR(40) NOT NULL,
  ciphertext VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_private_sheet PRIMARY KEY (tie, kind, club)
);

CREATE TABLE private_past_game (
  number INTEGER NOT NULL,
  played_on DATE NOT NULL,
  home_1 VARCHAR(200) NOT NULL,
  home_2 VARCHAR(200) NOT NULL,
  away_1 VARCHAR(200) NOT NULL,
  away_2 VARCHAR(200) NOT NULL,
  home INTEGER NOT NULL,
  away INTEGER NOT NULL,
  format VARCHAR(60) NOT NULL,
  CONSTRAINT pk_private_past_game PRIMARY KEY (number)
);
