-- By which link something was done: its label alone could be given to another one.
ALTER TABLE ledger ADD COLUMN by_link VARCHAR(400);

-- The link of the neutral person who opens.
ALTER TABLE opening_chosen ADD COLUMN link VARCHAR(400);

-- A club's older link let a newer one read what the club keeps for itself.
CREATE TABLE link_let_in (
  seq BIGINT NOT NULL,
  link VARCHAR(400) NOT NULL,
  CONSTRAINT pk_link_let_in PRIMARY KEY (seq),
  CONSTRAINT fk_link_let_in FOREIGN KEY (seq) REFERENCES ledger (seq)
);
