// DuckDB in process on the flat table: for every rule, how many parts fail it, and how many fail only it.
// usage: node duckdb_peer.mjs FOLDER [JOBS]      prints one line a job "rule=parts/only ...", then "time duckdb MEDIAN P95"
import { readFileSync } from 'node:fs';
import { DuckDBInstance } from '@duckdb/node-api';

const folder = process.argv[2];
const questions = JSON.parse(readFileSync(`${folder}/questions.json`, 'utf8')).questions.slice(0, Number(process.argv[3] ?? Infinity));
const db = await (await DuckDBInstance.create(':memory:')).connect();
await db.run(`CREATE TABLE flat AS SELECT * FROM read_csv('${folder}/flat.csv', header = true, sample_size = -1)`);
const times = [];
for (const [number, fails] of questions.entries()) {
  const rules = Object.keys(fails).sort();
  const inner = rules.map((rule, i) => `coalesce((${fails[rule]}), FALSE)::INT AS f${i}`).join(', ');
  const failed = rules.map((_, i) => `f${i}`).join(' + ');
  const outer = rules.map((_, i) => `sum(f${i}), sum(CASE WHEN f${i} = 1 AND failed = 1 THEN 1 ELSE 0 END)`).join(', ');
  const query = `SELECT ${outer} FROM (SELECT *, ${failed} AS failed FROM (SELECT ${inner} FROM flat))`;
  let best = Infinity;
  let row;
  for (let round = 0; round < 3; round++) {
    const begin = performance.now();
    row = (await (await db.runAndReadAll(query)).getRows())[0];
    best = Math.min(best, performance.now() - begin);
  }
  const said = rules.map((rule, i) => [rule, Number(row[2 * i]), Number(row[2 * i + 1])]).filter(([, parts]) => parts > 0);
  console.log(said.map(([rule, parts, only]) => `${rule}=${parts}/${only}`).join(' '));
  if (number < questions.length / 2) times.push(best * 1000);
}
times.sort((a, b) => a - b);
console.log(`time duckdb ${times[Math.floor(times.length / 2)].toFixed(1)} ${times[Math.floor(times.length * 0.95)].toFixed(1)}`);
