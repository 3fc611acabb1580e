-- What a player states to play in beside open rubbers, where the conditions have rubbers for women, men or mixed pairs.
ALTER TABLE private_person ADD COLUMN plays VARCHAR(20);
