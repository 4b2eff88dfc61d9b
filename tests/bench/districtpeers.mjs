// SPDX-License-Identifier: MIT
// districtpeers.mjs FOLDER: DuckDB answers the questions of Units from the same rounds (see district.cpp), two ways:
// with all three years in tables of its own in memory, and from Parquet files. Prints milliseconds, median of 15.
import { DuckDBInstance } from "@duckdb/node-api";

const folder = process.argv[2];
const database = await (await DuckDBInstance.create(":memory:")).connect();
const span = "day BETWEEN DATE '2026-10-01' AND DATE '2026-10-31'";
const both = "day BETWEEN DATE '2026-09-01' AND DATE '2026-10-31'";
const year = "day BETWEEN DATE '2025-11-01' AND DATE '2026-10-31'";

await database.run(`CREATE TABLE items AS SELECT row_number() OVER () AS position, item
    FROM read_csv_auto('${folder}/items.csv', header = true)`);
await database.run(`CREATE TABLE rounds AS SELECT * FROM read_csv_auto('${folder}/rounds.csv')`);
await database.run(`CREATE TABLE answers AS SELECT unit, day, shift, item, outcome FROM (
    SELECT unit, day, shift, unnest(string_split(outcomes, '')) AS outcome,
        generate_subscripts(string_split(outcomes, ''), 1) AS position FROM rounds) JOIN items USING (position)`);
for (const name of ["rounds", "answers"])
    await database.run(`COPY ${name} TO '${folder}/${name}.parquet' (FORMAT parquet)`);

const questions = (source) => [
    `SELECT unit, date_trunc('month', day) AS month, count(*) AS n, count(*) FILTER (state = 'ready') AS ready,
        count(*) FILTER (state = 'ready-with-gaps') AS with_gaps, sum(met) AS met, sum(applicable) AS applicable,
        sum(late) AS late, count(DISTINCT day) AS days
     FROM ${source("rounds")} WHERE ${both} GROUP BY ALL ORDER BY ALL`,
    `SELECT unit, date_trunc('month', day) AS month, count(*) AS n, count(*) FILTER (state <> 'not-ready') AS clear,
        sum(met) AS met, sum(applicable) AS applicable
     FROM ${source("rounds")} WHERE ${year} GROUP BY ALL ORDER BY ALL`,
    `SELECT unit, shift, count(*) AS n, count(*) FILTER (state <> 'not-ready') AS clear
     FROM ${source("rounds")} WHERE ${span} GROUP BY ALL ORDER BY ALL`,
    `SELECT unit, item, count(*) FILTER (outcome = 'g') AS gaps, count(*) AS looks
     FROM ${source("answers")} WHERE ${span} AND outcome IN ('m', 'g') GROUP BY ALL ORDER BY ALL`,
    `SELECT unit, max(day) AS last, max(silence) AS longest FROM (SELECT unit, day,
        day - lag(day) OVER (PARTITION BY unit ORDER BY day) AS silence
        FROM (SELECT DISTINCT unit, day FROM ${source("rounds")} WHERE ${span})) GROUP BY unit ORDER BY unit`,
];

async function district(source) {
    const answers = [];
    for (const question of questions(source))
        answers.push((await database.runAndReadAll(question)).getRows());
    return answers;
}

const middle = (times) => times.sort((a, b) => a - b)[Math.floor(times.length / 2)].toFixed(3);

// By the clock and of the processor.
async function medianMs(source) {
    const wall = [];
    const processor = [];
    for (let i = 0; i < 15; ++i) {
        const start = performance.now();
        const before = process.cpuUsage();
        await district(source);
        const used = process.cpuUsage(before);
        wall.push(performance.now() - start);
        processor.push((used.user + used.system) / 1000);
    }
    return `${middle(wall)} ${middle(processor)}`;
}

const inMemory = await medianMs((name) => name);
const fromFiles = await medianMs((name) => `'${folder}/${name}.parquet'`);
const gaps = (await district((name) => name))[3].reduce((sum, row) => sum + Number(row[2]), 0);
const memory = Math.round(process.resourceUsage().maxRSS / 1024);
const version = (await database.runAndReadAll("SELECT version()")).getRows()[0][0];
console.log(`DuckDB ${version}: ${inMemory} ${fromFiles} ${gaps} ${memory}`);
