CREATE TABLE ledger (
  seq BIGINT NOT NULL,
  CONSTRAINT pk_ledger PRIMARY KEY (seq)
);
