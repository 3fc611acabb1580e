-- Facts are appended and never changed: the service's own user may only SELECT and INSERT in these tables.
CREATE TABLE ledger (
  seq BIGINT NOT NULL,
  request_key VARCHAR(80) NOT NULL,
  kind VARCHAR(40) NOT NULL,
  by_role VARCHAR(20) NOT NULL,
  by_club VARCHAR(40),
  by_name VARCHAR(200) NOT NULL,
  device VARCHAR(80) NOT NULL,
  device_time TIMESTAMP(3) WITH TIME ZONE,
  received_at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
  CONSTRAINT pk_ledger PRIMARY KEY (seq),
  CONSTRAINT ck_ledger_seq CHECK (seq > 0)
);

CREATE INDEX ix_ledger_request_key ON ledger (request_key);

-- What a client's key was answered with, so that sending it again changes nothing.
CREATE TABLE request (
  request_key VARCHAR(80) NOT NULL,
  first_seq BIGINT NOT NULL,
  last_seq BIGINT NOT NULL,
  CONSTRAINT pk_request PRIMARY KEY (request_key)
);

CREATE TABLE event_described (
  seq BIGINT NOT NULL,
  name VARCHAR(400) NOT NULL,
  on_date DATE NOT NULL,
  venue VARCHAR(400) NOT NULL,
  zone VARCHAR(400) NOT NULL,
  starts TIME NOT NULL,
  venue_closes TIME,
  CONSTRAINT pk_event_described PRIMARY KEY (seq),
  CONSTRAINT fk_event_described FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE conditions_published (
  seq BIGINT NOT NULL,
  version INTEGER NOT NULL,
  conditions VARCHAR(8000) NOT NULL,
  ruling INTEGER,
  CONSTRAINT pk_conditions_published PRIMARY KEY (seq),
  CONSTRAINT fk_conditions_published FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE conditions_read (
  seq BIGINT NOT NULL,
  club VARCHAR(400) NOT NULL,
  version INTEGER NOT NULL,
  CONSTRAINT pk_conditions_read PRIMARY KEY (seq),
  CONSTRAINT fk_conditions_read FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE club_entered (
  seq BIGINT NOT NULL,
  club VARCHAR(400) NOT NULL,
  name VARCHAR(400) NOT NULL,
  town VARCHAR(400),
  seed INTEGER,
  CONSTRAINT pk_club_entered PRIMARY KEY (seq),
  CONSTRAINT fk_club_entered FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE club_removed (
  seq BIGINT NOT NULL,
  club VARCHAR(400) NOT NULL,
  CONSTRAINT pk_club_removed PRIMARY KEY (seq),
  CONSTRAINT fk_club_removed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE player_entered (
  seq BIGINT NOT NULL,
  player VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  rank INTEGER,
  from_time TIME,
  until_time TIME,
  deputy BOOLEAN NOT NULL,
  CONSTRAINT pk_player_entered PRIMARY KEY (seq),
  CONSTRAINT fk_player_entered FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE player_removed (
  seq BIGINT NOT NULL,
  player VARCHAR(400) NOT NULL,
  CONSTRAINT pk_player_removed PRIMARY KEY (seq),
  CONSTRAINT fk_player_removed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE court_set (
  seq BIGINT NOT NULL,
  court VARCHAR(400) NOT NULL,
  from_time TIME,
  until_time TIME,
  usable BOOLEAN NOT NULL,
  CONSTRAINT pk_court_set PRIMARY KEY (seq),
  CONSTRAINT fk_court_set FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE checked_in (
  seq BIGINT NOT NULL,
  player VARCHAR(400) NOT NULL,
  present BOOLEAN NOT NULL,
  CONSTRAINT pk_checked_in PRIMARY KEY (seq),
  CONSTRAINT fk_checked_in FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE link_issued (
  seq BIGINT NOT NULL,
  link VARCHAR(400) NOT NULL,
  role VARCHAR(400) NOT NULL,
  club VARCHAR(400),
  player VARCHAR(400),
  label VARCHAR(400) NOT NULL,
  hash VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_link_issued PRIMARY KEY (seq),
  CONSTRAINT fk_link_issued FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE link_revoked (
  seq BIGINT NOT NULL,
  link VARCHAR(400) NOT NULL,
  CONSTRAINT pk_link_revoked PRIMARY KEY (seq),
  CONSTRAINT fk_link_revoked FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE opening_chosen (
  seq BIGINT NOT NULL,
  organiser_is_captain BOOLEAN NOT NULL,
  neutral VARCHAR(400),
  CONSTRAINT pk_opening_chosen PRIMARY KEY (seq),
  CONSTRAINT fk_opening_chosen FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE pools_drawn (
  seq BIGINT NOT NULL,
  spoken_seed VARCHAR(400) NOT NULL,
  witness VARCHAR(400) NOT NULL,
  pools VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_pools_drawn PRIMARY KEY (seq),
  CONSTRAINT fk_pools_drawn FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE knockout_drawn (
  seq BIGINT NOT NULL,
  spoken_seed VARCHAR(400) NOT NULL,
  witness VARCHAR(400) NOT NULL,
  CONSTRAINT pk_knockout_drawn PRIMARY KEY (seq),
  CONSTRAINT fk_knockout_drawn FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE tie_arranged (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  stage VARCHAR(400) NOT NULL,
  pool VARCHAR(400),
  round INTEGER NOT NULL,
  home VARCHAR(400) NOT NULL,
  away VARCHAR(400) NOT NULL,
  CONSTRAINT pk_tie_arranged PRIMARY KEY (seq),
  CONSTRAINT fk_tie_arranged FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE tie_timed (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  start_time TIME,
  court VARCHAR(400),
  CONSTRAINT pk_tie_timed PRIMARY KEY (seq),
  CONSTRAINT fk_tie_timed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE slot_filled (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  side VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  CONSTRAINT pk_slot_filled PRIMARY KEY (seq),
  CONSTRAINT fk_slot_filled FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE sheet_sealed (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  receipt VARCHAR(400) NOT NULL,
  kept_on_phone BOOLEAN NOT NULL,
  CONSTRAINT pk_sheet_sealed PRIMARY KEY (seq),
  CONSTRAINT fk_sheet_sealed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE sheet_returned (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_sheet_returned PRIMARY KEY (seq),
  CONSTRAINT fk_sheet_returned FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE sheet_handed_in (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  CONSTRAINT pk_sheet_handed_in PRIMARY KEY (seq),
  CONSTRAINT fk_sheet_handed_in FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE opening_asked (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  CONSTRAINT pk_opening_asked PRIMARY KEY (seq),
  CONSTRAINT fk_opening_asked FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE side_ruled (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  forfeited BOOLEAN NOT NULL,
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_side_ruled PRIMARY KEY (seq),
  CONSTRAINT fk_side_ruled FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE sheets_opened (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  home VARCHAR(8000) NOT NULL,
  home_secret VARCHAR(400),
  away VARCHAR(8000) NOT NULL,
  away_secret VARCHAR(400),
  opened_at TIME,
  CONSTRAINT pk_sheets_opened PRIMARY KEY (seq),
  CONSTRAINT fk_sheets_opened FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE pair_replaced (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  pair VARCHAR(400),
  door VARCHAR(400) NOT NULL,
  approved_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_pair_replaced PRIMARY KEY (seq),
  CONSTRAINT fk_pair_replaced FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE club_told (
  seq BIGINT NOT NULL,
  exchange VARCHAR(400) NOT NULL,
  club VARCHAR(400) NOT NULL,
  CONSTRAINT pk_club_told PRIMARY KEY (seq),
  CONSTRAINT fk_club_told FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE court_called (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400),
  court VARCHAR(400) NOT NULL,
  CONSTRAINT pk_court_called PRIMARY KEY (seq),
  CONSTRAINT fk_court_called FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE call_taken_back (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400),
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_call_taken_back PRIMARY KEY (seq),
  CONSTRAINT fk_call_taken_back FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE card_entered (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  games VARCHAR(8000) NOT NULL,
  how VARCHAR(400) NOT NULL,
  as_it_stood VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_card_entered PRIMARY KEY (seq),
  CONSTRAINT fk_card_entered FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE card_corrected (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  games VARCHAR(8000) NOT NULL,
  how VARCHAR(400) NOT NULL,
  as_it_stood VARCHAR(8000) NOT NULL,
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_card_corrected PRIMARY KEY (seq),
  CONSTRAINT fk_card_corrected FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE card_taken_back (
  seq BIGINT NOT NULL,
  tie VARCHAR(400) NOT NULL,
  rubber VARCHAR(400) NOT NULL,
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_card_taken_back PRIMARY KEY (seq),
  CONSTRAINT fk_card_taken_back FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE club_withdrawn (
  seq BIGINT NOT NULL,
  club VARCHAR(400) NOT NULL,
  after_tie VARCHAR(400),
  treatment VARCHAR(400) NOT NULL,
  ruling INTEGER NOT NULL,
  CONSTRAINT pk_club_withdrawn PRIMARY KEY (seq),
  CONSTRAINT fk_club_withdrawn FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE lot_drawn (
  seq BIGINT NOT NULL,
  pool VARCHAR(400) NOT NULL,
  placing VARCHAR(8000) NOT NULL,
  witness VARCHAR(400) NOT NULL,
  CONSTRAINT pk_lot_drawn PRIMARY KEY (seq),
  CONSTRAINT fk_lot_drawn FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE table_signed (
  seq BIGINT NOT NULL,
  pool VARCHAR(400) NOT NULL,
  placing VARCHAR(8000) NOT NULL,
  signed_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_table_signed PRIMARY KEY (seq),
  CONSTRAINT fk_table_signed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE event_signed (
  seq BIGINT NOT NULL,
  placing VARCHAR(8000) NOT NULL,
  signed_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_event_signed PRIMARY KEY (seq),
  CONSTRAINT fk_event_signed FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE ruling_given (
  seq BIGINT NOT NULL,
  number INTEGER NOT NULL,
  about VARCHAR(8000) NOT NULL,
  ruling VARCHAR(8000) NOT NULL,
  reason VARCHAR(8000) NOT NULL,
  signed_by VARCHAR(400) NOT NULL,
  CONSTRAINT pk_ruling_given PRIMARY KEY (seq),
  CONSTRAINT fk_ruling_given FOREIGN KEY (seq) REFERENCES ledger (seq)
);

CREATE TABLE notice_posted (
  seq BIGINT NOT NULL,
  number INTEGER NOT NULL,
  words VARCHAR(8000) NOT NULL,
  tie VARCHAR(400),
  before_value VARCHAR(400),
  after_value VARCHAR(400),
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_notice_posted PRIMARY KEY (seq),
  CONSTRAINT fk_notice_posted FOREIGN KEY (seq) REFERENCES ledger (seq)
);
