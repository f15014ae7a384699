-- The catalog. One table here for each CSV table, with the same columns under the same names; what a column means is in
-- DICTIONARY.md. An empty cell is NULL: unknown, never a default. A constraint's name is what a person is told when a row breaks
-- it. Words are written with OR: for a list of three or more, IN builds a table of its own on every row that is inserted.
-- Made from engine/fields by the catalog's tests: change those, not this.

PRAGMA application_id = 1162757196; -- "ENDL"
PRAGMA user_version = 6; -- schema version: migrations/README.md

-- Everything that can be bought: one row a part, whatever its kind.
CREATE TABLE parts (
    part_id TEXT NOT NULL PRIMARY KEY,
    kind TEXT NOT NULL
        CONSTRAINT "motor, module or accessory" CHECK (kind = 'motor' OR kind = 'module' OR kind = 'accessory'),
    maker TEXT NOT NULL,
    part_number TEXT NOT NULL,
    status TEXT NOT NULL DEFAULT 'active'
        CONSTRAINT "active, superseded or discontinued" CHECK (status = 'active' OR status = 'superseded' OR status = 'discontinued'),
    description TEXT
) STRICT, WITHOUT ROWID;

-- What a motor is and how it is held: one row for each part of kind motor. An empty cell is unknown, which is never a pass and never a fail.
CREATE TABLE motors (
    part_id TEXT NOT NULL PRIMARY KEY REFERENCES parts (part_id),
    family TEXT
        CHECK (family = 'shaded pole' OR family = 'capacitor run' OR family = 'split phase' OR family = 'capacitor start' OR family = 'capacitor start and run' OR family = 'three phase' OR family = 'constant torque' OR family = 'constant airflow' OR family = 'communicating'),
    loads TEXT,
    retrofit_for TEXT,
    phase INTEGER
        CONSTRAINT "one or three phases" CHECK (phase IN (1, 3)),
    frequency_hz REAL
        CONSTRAINT "frequency above zero" CHECK (frequency_hz > 0),
    poles INTEGER
        CONSTRAINT "an even number of poles, 2 to 16" CHECK (poles BETWEEN 2 AND 16 AND poles % 2 = 0),
    rotation TEXT
        CHECK (rotation = 'CW' OR rotation = 'CCW' OR rotation = 'reversible'),
    rotation_viewed_from TEXT
        CHECK (rotation_viewed_from = 'shaft end' OR rotation_viewed_from = 'lead end'),
    double_shaft TEXT
        CHECK (double_shaft = 'yes' OR double_shaft = 'no'),
    shaft_diameter_in REAL
        CONSTRAINT "a shaft diameter above zero, at most 3 in" CHECK (shaft_diameter_in > 0 AND shaft_diameter_in <= 3),
    shaft_length_in REAL
        CONSTRAINT "a shaft length above zero, at most 60 in" CHECK (shaft_length_in > 0 AND shaft_length_in <= 60),
    shaft_flat_in REAL
        CONSTRAINT "a flat of zero to 60 in" CHECK (shaft_flat_in BETWEEN 0 AND 60),
    second_shaft_diameter_in REAL
        CONSTRAINT "a second shaft diameter above zero, at most 3 in" CHECK (second_shaft_diameter_in > 0 AND second_shaft_diameter_in <= 3),
    second_shaft_length_in REAL
        CONSTRAINT "a second shaft length above zero, at most 60 in" CHECK (second_shaft_length_in > 0 AND second_shaft_length_in <= 60),
    shaft_cuttable TEXT
        CHECK (shaft_cuttable = 'yes' OR shaft_cuttable = 'no'),
    body_diameter_in REAL
        CONSTRAINT "a body diameter above zero, at most 30 in" CHECK (body_diameter_in > 0 AND body_diameter_in <= 30),
    body_length_in REAL
        CONSTRAINT "a body length above zero, at most 60 in" CHECK (body_length_in > 0 AND body_length_in <= 60),
    frame TEXT,
    mount TEXT
        CHECK (mount = 'band' OR mount = 'studs' OR mount = 'lugs' OR mount = 'ring' OR mount = 'base' OR mount = 'face'),
    bolt_circle_in REAL
        CONSTRAINT "a bolt circle above zero, at most 30 in" CHECK (bolt_circle_in > 0 AND bolt_circle_in <= 30),
    drive TEXT
        CHECK (drive = 'direct' OR drive = 'belt' OR drive = 'either'),
    enclosure TEXT
        CHECK (enclosure = 'ODP' OR enclosure = 'OPAO' OR enclosure = 'TEAO' OR enclosure = 'TENV' OR enclosure = 'TEFC'),
    bearing TEXT
        CHECK (bearing = 'ball' OR bearing = 'sleeve'),
    positions TEXT,
    ambient_c REAL
        CONSTRAINT "an ambient between -60 and 150 C" CHECK (ambient_c BETWEEN -60 AND 150),
    service_factor REAL
        CONSTRAINT "a service factor of 1 to 2" CHECK (service_factor BETWEEN 1 AND 2),
    protection TEXT
        CHECK (protection = 'thermal automatic' OR protection = 'thermal manual' OR protection = 'impedance' OR protection = 'none'),
    capacitor_uf REAL
        CONSTRAINT "microfarad above zero" CHECK (capacitor_uf > 0),
    capacitor_v REAL
        CONSTRAINT "capacitor volts above zero" CHECK (capacitor_v > 0),
    speeds INTEGER
        CONSTRAINT "1 to 20 speeds" CHECK (speeds BETWEEN 1 AND 20),
    signal TEXT
        CHECK (signal = 'switched line' OR signal = 'line signal' OR signal = '24 V' OR signal = 'pulse' OR signal = 'serial'),
    tap_rule TEXT
        CHECK (tap_rule = 'one tap only' OR tap_rule = 'highest tap wins' OR tap_rule = 'not stated'),
    speed_limit_rpm REAL
        CONSTRAINT "a speed limit above zero" CHECK (speed_limit_rpm > 0),
    default_tap INTEGER
        CONSTRAINT "0 for a stop, or the number of a tap" CHECK (default_tap BETWEEN 0 AND 20),
    includes_module TEXT
        CHECK (includes_module = 'yes' OR includes_module = 'no'),
    program TEXT,
    assembly TEXT,
    connector TEXT,
    efficiency REAL
        CONSTRAINT "an efficiency above 0, at most 1" CHECK (efficiency > 0 AND efficiency <= 1),
    warranty_months INTEGER
        CONSTRAINT "0 to 600 months" CHECK (warranty_months BETWEEN 0 AND 600)
) STRICT, WITHOUT ROWID;

-- Power, voltage, current and speed that belong together. A motor for two voltages, or of several powers, has several rows.
CREATE TABLE motor_ratings (
    part_id TEXT NOT NULL REFERENCES motors (part_id),
    rating INTEGER NOT NULL
        CONSTRAINT "ratings count from 1" CHECK (rating BETWEEN 1 AND 100),
    power_hp REAL
        CONSTRAINT "power above zero" CHECK (power_hp > 0),
    volts TEXT
        CONSTRAINT "volts such as 115 or 208-230" CHECK (volts GLOB '[1-9]*'),
    amps REAL
        CONSTRAINT "amps above zero" CHECK (amps > 0),
    speed_rpm REAL
        CONSTRAINT "rpm above zero" CHECK (speed_rpm > 0),
    selection TEXT
        CHECK (selection = 'none' OR selection = 'jumper' OR selection = 'plug' OR selection = 'leads'),
    PRIMARY KEY (part_id, rating)
) STRICT, WITHOUT ROWID;

-- Speeds that a motor can be set to: speed leads of an induction motor, taps of an electronic one.
CREATE TABLE taps (
    part_id TEXT NOT NULL REFERENCES motors (part_id),
    tap INTEGER NOT NULL
        CONSTRAINT "taps count from 1" CHECK (tap BETWEEN 1 AND 20),
    label TEXT,
    torque_ozft REAL
        CONSTRAINT "torque above zero" CHECK (torque_ozft > 0),
    speed_rpm REAL
        CONSTRAINT "rpm above zero" CHECK (speed_rpm > 0),
    signal TEXT
        CHECK (signal = 'switched line' OR signal = 'line signal' OR signal = '24 V' OR signal = 'pulse' OR signal = 'serial'),
    off_delay_s REAL
        CONSTRAINT "an off delay of zero or more" CHECK (off_delay_s >= 0),
    PRIMARY KEY (part_id, tap)
) STRICT, WITHOUT ROWID;

-- Control halves of constant-airflow motors: one row for each part of kind module.
CREATE TABLE modules (
    part_id TEXT NOT NULL PRIMARY KEY REFERENCES parts (part_id),
    program TEXT,
    volts TEXT
        CONSTRAINT "volts such as 115 or 208-230" CHECK (volts GLOB '[1-9]*'),
    signal TEXT
        CHECK (signal = 'switched line' OR signal = 'line signal' OR signal = '24 V' OR signal = 'pulse' OR signal = 'serial'),
    power_hp REAL
        CONSTRAINT "power above zero" CHECK (power_hp > 0),
    warranty_months INTEGER
        CONSTRAINT "0 to 600 months" CHECK (warranty_months BETWEEN 0 AND 600)
) STRICT, WITHOUT ROWID;

-- Motors that a module belongs to.
CREATE TABLE module_fits (
    part_id TEXT NOT NULL REFERENCES modules (part_id),
    motor TEXT NOT NULL,
    PRIMARY KEY (part_id, motor)
) STRICT, WITHOUT ROWID;

-- Where wires land on a part. Wiring comes from here, never from the colour of a wire.
CREATE TABLE terminals (
    part_id TEXT NOT NULL REFERENCES parts (part_id),
    connector TEXT NOT NULL DEFAULT '',
    label TEXT NOT NULL,
    function TEXT NOT NULL,
    PRIMARY KEY (part_id, connector, label, function)
) STRICT, WITHOUT ROWID;

-- What an accessory puts right, one row a cure. Sizes are those of the cure: a bushing goes from the shaft to the bore.
CREATE TABLE accessories (
    part_id TEXT NOT NULL REFERENCES parts (part_id),
    cure_no INTEGER NOT NULL
        CONSTRAINT "cures count from 1" CHECK (cure_no BETWEEN 1 AND 100),
    cure TEXT NOT NULL
        CHECK (cure = 'shaft bushing' OR cure = 'shaft cut' OR cure = 'mount band' OR cure = 'mount adapter' OR cure = 'body ring' OR cure = 'run capacitor' OR cure = 'capacitor removal' OR cure = 'isolation relay' OR cure = 'line relay' OR cure = 'harness' OR cure = 'transformer' OR cure = 'voltage selection' OR cure = 'rotation selection' OR cure = 'rain shield' OR cure = 'lead parking' OR cure = 'control module' OR cure = 'airflow setup' OR cure = 'start capacitor' OR cure = 'line fuse' OR cure = 'control fuse' OR cure = 'float switch' OR cure = 'door switch' OR cure = 'contactor' OR cure = 'board relay'),
    from_in REAL
        CONSTRAINT "a size to cure from above zero" CHECK (from_in > 0),
    to_in REAL
        CONSTRAINT "a size to cure to above zero" CHECK (to_in > 0),
    capacitor_uf REAL
        CONSTRAINT "microfarad above zero" CHECK (capacitor_uf > 0),
    capacitor_v REAL
        CONSTRAINT "capacitor volts above zero" CHECK (capacitor_v > 0),
    mount TEXT
        CHECK (mount = 'band' OR mount = 'studs' OR mount = 'lugs' OR mount = 'ring' OR mount = 'base' OR mount = 'face'),
    coil_v REAL
        CONSTRAINT "coil volts above zero" CHECK (coil_v > 0),
    power_va REAL
        CONSTRAINT "VA above zero" CHECK (power_va > 0),
    primary_v TEXT
        CONSTRAINT "volts such as 115 or 208-230" CHECK (primary_v GLOB '[1-9]*'),
    poles INTEGER
        CONSTRAINT "1 to 12 contact poles" CHECK (poles BETWEEN 1 AND 12),
    connector_from TEXT,
    connector_to TEXT,
    compressor_uf REAL
        CONSTRAINT "microfarad above zero" CHECK (compressor_uf > 0),
    amps REAL
        CONSTRAINT "amps above zero" CHECK (amps > 0),
    PRIMARY KEY (part_id, cure_no)
) STRICT, WITHOUT ROWID;

-- Parts that cannot be used together with an accessory.
CREATE TABLE accessory_excludes (
    part_id TEXT NOT NULL REFERENCES parts (part_id),
    other_part_id TEXT NOT NULL,
    PRIMARY KEY (part_id, other_part_id)
) STRICT, WITHOUT ROWID;

-- What became of old numbers. Each row is a claim with its source; rules still check the fit.
CREATE TABLE cross_references (
    old_number TEXT NOT NULL,
    part_id TEXT NOT NULL,
    relation TEXT NOT NULL
        CHECK (relation = 'replaces' OR relation = 'supersedes' OR relation = 'superseded by' OR relation = 'equivalent'),
    source TEXT NOT NULL,
    PRIMARY KEY (old_number, part_id, relation)
) STRICT, WITHOUT ROWID;

-- Prices, with seller, branch and date. A table of its own: it may be replaced alone every night.
CREATE TABLE offers (
    part_id TEXT NOT NULL REFERENCES parts (part_id),
    branch TEXT NOT NULL DEFAULT '',
    seller TEXT NOT NULL,
    price TEXT,
    currency TEXT NOT NULL
        CONSTRAINT "an ISO 4217 code" CHECK (length(currency) = 3),
    core_credit TEXT,
    stock INTEGER
        CONSTRAINT "a stock of zero or more" CHECK (stock >= 0),
    lead_days INTEGER
        CONSTRAINT "lead days of zero or more" CHECK (lead_days >= 0),
    as_of TEXT NOT NULL
        CONSTRAINT "a date such as 2026-01-31" CHECK (as_of GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    PRIMARY KEY (part_id, branch, seller)
) STRICT, WITHOUT ROWID;

-- Hours that the shop takes for a piece of work.
CREATE TABLE labour_tasks (
    task TEXT NOT NULL PRIMARY KEY
        CHECK (task = 'motor swap' OR task = 'module swap' OR task = 'module fit' OR task = 'retrofit swap' OR task = 'capacitor swap' OR task = 'inducer swap' OR task = 'condenser motor swap' OR task = 'shaft cut' OR task = 'bushing fit' OR task = 'band fit' OR task = 'adapter fit' OR task = 'relay fit' OR task = 'transformer fit' OR task = 'harness fit' OR task = 'voltage selection' OR task = 'rotation selection' OR task = 'lead parking' OR task = 'airflow setup' OR task = 'capacitor removal' OR task = 'rain shield fit' OR task = 'filter change' OR task = 'duct repair' OR task = 'control repair' OR task = 'supply repair' OR task = 'diagnosis' OR task = 'second visit'),
    hours TEXT NOT NULL,
    source TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Rows of the program's own limits that this shop tightens. Loosening one is refused.
CREATE TABLE limits (
    "limit" TEXT NOT NULL PRIMARY KEY,
    value REAL NOT NULL,
    set_by TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Below: the store's own. None of it comes from a CSV column.

CREATE INDEX cross_references_of_part ON cross_references (part_id);

-- One row: which generation this file is, and the fingerprint of all its rows.
CREATE TABLE generation (
    one    INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    number INTEGER NOT NULL CHECK (number > 0),
    digest TEXT NOT NULL
) STRICT;

-- How many rows each table has and the sum of their fingerprints, so that a nightly price update need not read the rest again;
-- and the columns that its files had, with a blank between: no row knows any other.
CREATE TABLE table_digests (
    table_name TEXT NOT NULL PRIMARY KEY,
    row_count  INTEGER NOT NULL,
    row_sum    TEXT NOT NULL,
    filled     TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Every number a part is known by, to be looked up: lines of sight key, number and part_id with a tab between, in the order
-- of their bytes, about a kilobyte of them a row. Sight key: letters and digits only, characters that are misread for each
-- other folded.
CREATE TABLE numbers (
    lines TEXT NOT NULL PRIMARY KEY
) STRICT, WITHOUT ROWID;

-- The column map that last read a file with this header.
CREATE TABLE column_maps (
    header     TEXT NOT NULL PRIMARY KEY,
    table_name TEXT NOT NULL,
    map        TEXT NOT NULL
) STRICT, WITHOUT ROWID;
