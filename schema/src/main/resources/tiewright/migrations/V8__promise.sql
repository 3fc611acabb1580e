-- Rubbers that a captain promised a player for the day. For the own club alone; no row: nothing promised.
CREATE TABLE private_promise (
  player VARCHAR(40) NOT NULL,
  rubbers INTEGER NOT NULL,
  CONSTRAINT pk_private_promise PRIMARY KEY (player),
  CONSTRAINT ck_private_promise CHECK (rubbers >= 1)
);
