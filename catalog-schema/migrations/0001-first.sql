-- Version 1 is what schema.sql creates. Nothing to change.
SELECT 1;
