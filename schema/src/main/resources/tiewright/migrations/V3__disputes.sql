-- When the day goes wrong: corrections with their choice, ties begun again, stopped play, cases, protests.
CREATE TABLE tie_restarted (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  home VARCHAR(400),
  away VARCHAR(400),
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_tie_restarted PRIMARY KEY (seq),
  CONSTRAINT fk_tie_restarted FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE slot_kept (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  side VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_slot_kept PRIMARY KEY (seq),
  CONSTRAINT fk_slot_kept FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE play_stopped (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  CONSTRAINT pk_play_stopped PRIMARY KEY (seq),
  CONSTRAINT fk_play_stopped FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE play_resumed (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  CONSTRAINT pk_play_resumed PRIMARY KEY (seq),
  CONSTRAINT fk_play_resumed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE correction_decided (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  games VARCHAR(8000) NOT NULL,
  how VARCHAR(400) NOT NULL,
  choice VARCHAR(400) NOT NULL,
  ruling INTEGER NOT NULL,
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_correction_decided PRIMARY KEY (seq),
  CONSTRAINT fk_correction_decided FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE signature_withdrawn (
  seq BIGINT NOT NULL,
  pool VARCHAR(400),
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_signature_withdrawn PRIMARY KEY (seq),
  CONSTRAINT fk_signature_withdrawn FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE case_ruled (
  seq BIGINT NOT NULL,
  what VARCHAR(400) NOT NULL,
  tie VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  penalty VARCHAR(400) NOT NULL,
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_case_ruled PRIMARY KEY (seq),
  CONSTRAINT fk_case_ruled FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE protest_made (
  seq BIGINT NOT NULL,
  number INTEGER NOT NULL,
  club VARCHAR(400) NOT NULL,
  tie VARCHAR(400),
  words VARCHAR(8000) NOT NULL,
  deposit VARCHAR(400),
  signed_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_protest_made PRIMARY KEY (seq),
  CONSTRAINT fk_protest_made FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE protest_decided (
  seq BIGINT NOT NULL,
  number INTEGER NOT NULL,
  upheld BOOLEAN NOT NULL,
  deposit_returned BOOLEAN NOT NULL,
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_protest_decided PRIMARY KEY (seq),
  CONSTRAINT fk_protest_decided FOREIGN KEY (seq) REFERENCES ledger (seq)
);

-- Who is marked as hurt: for the own captain and officials, never published, erased on its date.
CREATE TABLE private_hurt (
  player VARCHAR(40) NOT NULL,
  CONSTRAINT pk_private_hurt PRIMARY KEY (player)
);
