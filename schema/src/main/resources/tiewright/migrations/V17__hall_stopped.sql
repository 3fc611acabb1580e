-- Play stands still on every court until a time of the event's day; without one it goes on.
CREATE TABLE hall_stopped (
  seq BIGINT NOT NULL,
  until_time TIME,
  reason VARCHAR(8000) NOT NULL,
  CONSTRAINT pk_hall_stopped PRIMARY KEY (seq),
  CONSTRAINT fk_hall_stopped FOREIGN KEY (seq) REFERENCES ledger (seq)
);
