-- The order of play as it is published, who was told of a change, and what was decided in heat.

CREATE TABLE plan_published (
  seq BIGINT NOT NULL,
  version INTEGER NOT NULL,
  notice INTEGER NOT NULL,
  slot_minutes INTEGER NOT NULL,
  seed VARCHAR(400) NOT NULL,
  reason VARCHAR(8000) NOT NULL,
  signed_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_plan_published PRIMARY KEY (seq),
  CONSTRAINT fk_plan_published FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE rubber_timed (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  start_time TIME NOT NULL,
  court VARCHAR(400) NOT NULL,
  umpires VARCHAR(400),
  CONSTRAINT pk_rubber_timed PRIMARY KEY (seq),
  CONSTRAINT fk_rubber_timed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE tie_called_off (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_tie_called_off PRIMARY KEY (seq),
  CONSTRAINT fk_tie_called_off FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE notice_told (
  seq BIGINT NOT NULL,
  notice INTEGER NOT NULL,
  club VARCHAR(400) NOT NULL,
  told BOOLEAN NOT NULL,
  CONSTRAINT pk_notice_told PRIMARY KEY (seq),
  CONSTRAINT fk_notice_told FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE heat_decided (
  seq BIGINT NOT NULL,
  measure VARCHAR(400) NOT NULL,
  tenths INTEGER NOT NULL,
  tier VARCHAR(400) NOT NULL,
  decision VARCHAR(8000) NOT NULL,
  signed_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_heat_decided PRIMARY KEY (seq),
  CONSTRAINT fk_heat_decided FOREIGN KEY (seq) REFERENCES ledger (seq)
);
