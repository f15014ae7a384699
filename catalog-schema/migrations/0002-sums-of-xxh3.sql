-- The sums of rows are of another hash, which SQL cannot compute: the program makes them anew, with the version, when it
-- next imports into a catalog of version 1 or restores one. Its tables are those of version 1.
SELECT 1;
