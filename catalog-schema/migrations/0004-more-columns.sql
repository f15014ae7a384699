ALTER TABLE accessories ADD COLUMN primary_v TEXT
        CONSTRAINT "volts such as 115 or 208-230" CHECK (primary_v GLOB '[1-9]*');
PRAGMA user_version = 4;
