-- Where help is at the place of the event.
CREATE TABLE safety_described (
  seq BIGINT NOT NULL,
  first_aid VARCHAR(400) NOT NULL,
  defibrillator VARCHAR(400) NOT NULL,
  emergency VARCHAR(400) NOT NULL,
  CONSTRAINT pk_safety_described PRIMARY KEY (seq),
  CONSTRAINT fk_safety_described FOREIGN KEY (seq) REFERENCES ledger (seq)
);
