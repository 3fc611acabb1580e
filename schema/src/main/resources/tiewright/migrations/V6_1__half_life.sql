-- How much older games count in a club's own ratings: half as much after so many days. No row: every game counts the same.
CREATE TABLE private_half_life (
  club VARCHAR(40) NOT NULL,
  days INTEGER NOT NULL,
  CONSTRAINT pk_private_half_life PRIMARY KEY (club),
  CONSTRAINT ck_private_half_life CHECK (days >= 1)
);
