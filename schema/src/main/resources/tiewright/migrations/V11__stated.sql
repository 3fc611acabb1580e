-- Rulings and notices that a decision puts into words: codes and facts as they stood, never a sentence.
CREATE TABLE ruling_stated (
  seq BIGINT NOT NULL,
  number INTEGER NOT NULL,
  about VARCHAR(8000) NOT NULL,
  ruling VARCHAR(8000) NOT NULL,
  reason VARCHAR(8000) NOT NULL,
  signed_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_ruling_stated PRIMARY KEY (seq),
  CONSTRAINT fk_ruling_stated FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE notice_stated (
  seq BIGINT NOT NULL,
  number INTEGER NOT NULL,
  words VARCHAR(8000) NOT NULL,
  tie VARCHAR(400),
  before_value VARCHAR(8000),
  after_value VARCHAR(8000),
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_notice_stated PRIMARY KEY (seq),
  CONSTRAINT fk_notice_stated FOREIGN KEY (seq) REFERENCES ledger (seq)
);
