-- What a club was shown of its own sheet can be hidden from it again.
ALTER TABLE club_told ADD COLUMN told BOOLEAN DEFAULT TRUE NOT NULL;
