-- Two players of one name, or nearly one, are two people: said once, asked no more.
CREATE TABLE two_people (
  seq BIGINT NOT NULL,
  one VARCHAR(400) NOT NULL,
  other VARCHAR(400) NOT NULL,
  CONSTRAINT pk_two_people PRIMARY KEY (seq),
  CONSTRAINT fk_two_people FOREIGN KEY (seq) REFERENCES ledger (seq)
);
