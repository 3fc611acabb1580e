-- How often a club's private notes were changed: what its forms have seen is counted by it. For the own club alone.
CREATE TABLE private_count (
  club VARCHAR(40) NOT NULL,
  number BIGINT NOT NULL,
  CONSTRAINT pk_private_count PRIMARY KEY (club)
);

-- When each thing a club noted was last changed and by whom, so that a form made before is known to be old. What stands there
-- now is in the table of its kind.
CREATE TABLE private_change (
  club VARCHAR(40) NOT NULL,
  about VARCHAR(20) NOT NULL,
  what VARCHAR(200) NOT NULL,
  player_1 VARCHAR(40),
  player_2 VARCHAR(40),
  number BIGINT NOT NULL,
  by_name VARCHAR(200) NOT NULL,
  changed_at TIMESTAMP(3) WITH TIME ZONE NOT NULL,
  CONSTRAINT pk_private_change PRIMARY KEY (club, about, what)
);

-- Forms about private notes that were answered: sent again they change nothing.
CREATE TABLE private_request (
  club VARCHAR(40) NOT NULL,
  request_key VARCHAR(80) NOT NULL,
  CONSTRAINT pk_private_request PRIMARY KEY (club, request_key)
);
