-- Which ruling a changed card rests on stood in the reason, in English.
ALTER TABLE card_corrected ADD COLUMN ruling INTEGER;
ALTER TABLE card_taken_back ADD COLUMN ruling INTEGER;
