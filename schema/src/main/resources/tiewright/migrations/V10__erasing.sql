-- When private data go, what stands for players afterwards, and that they have gone.
CREATE TABLE deletion_dated (
  seq BIGINT NOT NULL,
  on_date DATE NOT NULL,
  names VARCHAR(400) NOT NULL,
  CONSTRAINT pk_deletion_dated PRIMARY KEY (seq),
  CONSTRAINT fk_deletion_dated FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE data_erased (
  seq BIGINT NOT NULL,
  counts VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_data_erased PRIMARY KEY (seq),
  CONSTRAINT fk_data_erased FOREIGN KEY (seq) REFERENCES ledger (seq)
);
