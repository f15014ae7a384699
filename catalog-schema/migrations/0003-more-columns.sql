ALTER TABLE motors ADD COLUMN second_shaft_diameter_in REAL
        CONSTRAINT "a second shaft diameter above zero, at most 3 in" CHECK (second_shaft_diameter_in > 0 AND second_shaft_diameter_in <= 3);
ALTER TABLE motors ADD COLUMN second_shaft_length_in REAL
        CONSTRAINT "a second shaft length above zero, at most 60 in" CHECK (second_shaft_length_in > 0 AND second_shaft_length_in <= 60);
PRAGMA user_version = 3;
