-- Which games were one rubber, and of how many games it was the best, where an earlier game says so.
ALTER TABLE private_past_game ADD COLUMN rubber VARCHAR(200);
ALTER TABLE private_past_game ADD COLUMN best_of INTEGER;
ALTER TABLE private_club_game ADD COLUMN rubber VARCHAR(200);
ALTER TABLE private_club_game ADD COLUMN best_of INTEGER;
