ALTER TABLE accessories ADD COLUMN primary_v TEXT
        CONSTRAINT "volts such as 115 or 208-230" CHECK (primary_v GLOB '[1-9]*');
ALTER TABLE motors ADD COLUMN default_tap INTEGER
        CONSTRAINT "0 for a stop, or the number of a tap" CHECK (default_tap BETWEEN 0 AND 20);
ALTER TABLE motors ADD COLUMN includes_module TEXT
        CHECK (includes_module = 'yes' OR includes_module = 'no');
PRAGMA user_version = 4;
