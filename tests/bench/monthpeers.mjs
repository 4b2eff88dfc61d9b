// SPDX-License-Identifier: MIT
// monthpeers.mjs FOLDER: DuckDB answers the questions of Month from the same rounds (see month.cpp), two ways: with
// all five years in tables of its own in memory, and from Parquet files. Prints milliseconds, median of 15.
import { DuckDBInstance } from "@duckdb/node-api";

const folder = process.argv[2];
const database = await (await DuckDBInstance.create(":memory:")).connect();
const span = "day BETWEEN DATE '2026-10-01' AND DATE '2026-10-31'";

for (const name of ["rounds", "answers", "readings"]) {
    await database.run(`CREATE TABLE ${name} AS SELECT * FROM read_csv_auto('${folder}/${name}.csv')`);
    await database.run(`COPY ${name} TO '${folder}/${name}.parquet' (FORMAT parquet)`);
}

const questions = (source) => [
    `SELECT state, count(*) AS n FROM ${source("rounds")} WHERE ${span} GROUP BY state`,
    `WITH lost AS (SELECT item, count(*) FILTER (outcome = 'g') AS gaps, count(*) AS n,
            count(*) FILTER (outcome = 'g') * any_value(weight) AS loss
         FROM ${source("answers")} WHERE ${span} AND outcome IN ('m', 'g') GROUP BY item)
     SELECT *, sum(loss) OVER (ORDER BY loss DESC, item) / sum(loss) OVER () AS so_far FROM lost
     WHERE gaps > 0 ORDER BY loss DESC`,
    `SELECT item, date_trunc('week', day) AS week, count(*) FILTER (outcome = 'g') AS gaps, count(*) AS n
     FROM ${source("answers")} WHERE ${span} AND outcome IN ('m', 'g') GROUP BY ALL`,
    `SELECT shift, sum(met) AS met, sum(applicable) AS n FROM ${source("rounds")} WHERE ${span} GROUP BY shift`,
    `SELECT isodow(day) AS weekday, sum(met) AS met, sum(applicable) AS n
     FROM ${source("rounds")} WHERE ${span} GROUP BY ALL`,
    `SELECT item, sum(outside) AS outside, count(*) AS n, median(value) AS median
     FROM ${source("readings")} WHERE ${span} GROUP BY item`,
];

async function month(source) {
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
        await month(source);
        const used = process.cpuUsage(before);
        wall.push(performance.now() - start);
        processor.push((used.user + used.system) / 1000);
    }
    return `${middle(wall)} ${middle(processor)}`;
}

const inMemory = await medianMs((name) => name);
const fromFiles = await medianMs((name) => `'${folder}/${name}.parquet'`);
const lost = (await month((name) => name))[1];
const gaps = lost.reduce((sum, row) => sum + Number(row[1]), 0);
const version = (await database.runAndReadAll("SELECT version()")).getRows()[0][0];
console.log(`DuckDB ${version}: ${inMemory} ${fromFiles} ${gaps}`);
