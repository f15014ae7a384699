ALTER TABLE accessories ADD COLUMN compressor_uf REAL
        CONSTRAINT "microfarad above zero" CHECK (compressor_uf > 0);
ALTER TABLE accessories ADD COLUMN amps REAL
        CONSTRAINT "amps above zero" CHECK (amps > 0);
PRAGMA user_version = 5;
