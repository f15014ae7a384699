ALTER TABLE motors ADD COLUMN drive TEXT
        CHECK (drive = 'direct' OR drive = 'belt' OR drive = 'either');
PRAGMA user_version = 6;
