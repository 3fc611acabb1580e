-- A notice names whom it concerns beside the clubs of the ties whose times change under it.
ALTER TABLE notice_stated ADD COLUMN clubs VARCHAR(8000) DEFAULT '' NOT NULL;
