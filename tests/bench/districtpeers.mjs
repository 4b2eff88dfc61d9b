// SPDX-License-Identifier: MIT
// districtpeers.mjs FOLDER: DuckDB answers the questions of Units from the same rounds (see district.cpp), the rounds
// alone and with what is asked about the entries, each two ways: with all three years in tables of its own in memory,
// and from Parquet files. Prints milliseconds, median of 15.
import { DuckDBInstance } from "@duckdb/node-api";

const folder = process.argv[2];
const database = await (await DuckDBInstance.create(":memory:")).connect();
const span = "day BETWEEN DATE '2026-10-01' AND DATE '2026-10-31'";
const both = "day BETWEEN DATE '2026-09-01' AND DATE '2026-10-31'";
const year = "day BETWEEN DATE '2025-11-01' AND DATE '2026-10-31'";
const lookBack = "day BETWEEN DATE '2026-03-30' AND DATE '2026-10-31'"; // 26 weeks before the week of the first day

// As it likes them best: texts that repeat as enums, older days apart from newer ones, so that it can skip them.
const csv = (name) => `read_csv_auto('${folder}/${name}.csv', header = true)`;
for (const [type, values] of [["unit", "unit FROM " + csv("rounds")], ["state", "state FROM " + csv("rounds")],
    ["item", "item FROM " + csv("items")]])
    await database.run(`CREATE TYPE ${type}_name AS ENUM (SELECT DISTINCT ${values})`);
await database.run("CREATE TYPE letter AS ENUM ('m', 'g', 'n', 'u')");
await database.run(`CREATE TABLE items AS SELECT row_number() OVER () AS position, item::item_name AS item
    FROM ${csv("items")}`);
await database.run(`CREATE TABLE readings AS SELECT unit::unit_name AS unit, day, shift::UTINYINT AS shift,
    item::item_name AS item, thousandths::INTEGER AS thousandths FROM ${csv("readings")} ORDER BY day, unit, shift`);
await database.run(`CREATE TABLE rounds AS SELECT * REPLACE (unit::unit_name AS unit, state::state_name AS state,
    shift::UTINYINT AS shift), outcomes || ' ' || all_read AS said
    FROM ${csv("rounds")} LEFT JOIN (SELECT unit, day, shift, string_agg(thousandths, ' ' ORDER BY item) AS all_read
        FROM readings GROUP BY ALL) USING (unit, day, shift) ORDER BY day, unit, shift`);
// What a round says of an item: the reading, or else the letter.
await database.run(`CREATE TABLE answers AS SELECT unit, day, shift, item, outcome::letter AS outcome,
        coalesce(thousandths, -ascii(outcome))::INTEGER AS said FROM (
    SELECT unit, day, shift, unnest(string_split(outcomes, '')) AS outcome,
        generate_subscripts(string_split(outcomes, ''), 1) AS position FROM rounds) JOIN items USING (position)
    LEFT JOIN readings USING (unit, day, shift, item) ORDER BY day, unit, shift`);
for (const name of ["rounds", "answers", "readings"])
    await database.run(`COPY ${name} TO '${folder}/${name}.parquet' (FORMAT parquet)`);

const ofRounds = (source) => [
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

// What a look at the entries asks: done of due, whole rounds that repeat and the chance of that, pace, readings that are
// rounded or never vary, items not looked at, late entry. Limits and tests on these sums are left out.
const ofEntries = (source) => [
    `SELECT unit, count(*) AS due, count(round.day) AS done
     FROM (SELECT DISTINCT unit FROM ${source("rounds")}) CROSS JOIN range(DATE '2026-10-01', DATE '2026-11-01',
        INTERVAL 1 DAY) AS days (day) CROSS JOIN range(3) AS shifts (shift)
     LEFT JOIN (SELECT unit, day, shift FROM ${source("rounds")} WHERE ${span}) AS round USING (unit, day, shift)
     GROUP BY unit ORDER BY unit`,
    `SELECT unit, sum(n) AS compared, sum(n - 1) AS repeating, sum(n * (n - 1) / 2) AS pairs
     FROM (SELECT unit, said, count(*) AS n FROM ${source("rounds")} WHERE ${span} GROUP BY ALL)
     GROUP BY unit ORDER BY unit`,
    `SELECT unit, exp(sum(ln(same))) AS chance FROM (SELECT unit, item, sum(n * n) / sum(n) ** 2 AS same
        FROM (SELECT unit, item, said, count(*) AS n FROM ${source("answers")} WHERE ${lookBack} GROUP BY ALL)
        GROUP BY ALL) GROUP BY unit ORDER BY unit`,
    `WITH timed AS (SELECT unit, seconds, ln(seconds) AS log, seconds / applicable AS each
        FROM ${source("rounds")} WHERE ${span} AND seconds > 0),
     paces AS (SELECT unit, median(log) AS middle, mad(log) AS spread, median(seconds) AS seconds, median(each) AS each
        FROM timed GROUP BY unit)
     SELECT unit, any_value(paces.seconds), any_value(paces.each), count(*) AS timed, count(*) FILTER (timed.each < 2
        OR (log - middle) / (1.4826 * spread) < -3) AS too_fast
     FROM timed JOIN paces USING (unit) GROUP BY unit ORDER BY unit`,
    `SELECT unit, item, count(*) AS n, count(*) FILTER (thousandths % 500 = 0) AS on_fives,
        count(DISTINCT thousandths) AS different, mode(thousandths) AS heap,
        quantile_cont(thousandths, [0.05, 0.95]) AS middle, list(thousandths // 100 % 10) AS digits
     FROM ${source("readings")} WHERE ${span} GROUP BY ALL ORDER BY ALL`,
    `SELECT unit, item, max(run) AS longest FROM (SELECT unit, item, count(*) AS run FROM (
        SELECT unit, item, row_number() OVER (PARTITION BY unit, item ORDER BY day, shift)
            - row_number() OVER (PARTITION BY unit, item, thousandths ORDER BY day, shift) AS streak, thousandths
        FROM ${source("readings")} WHERE ${span}) GROUP BY unit, item, thousandths, streak) GROUP BY ALL ORDER BY ALL`,
    `SELECT unit, item, min(thousandths) < max(thousandths) AS varied
     FROM ${source("readings")} WHERE ${lookBack} GROUP BY ALL ORDER BY ALL`,
    `SELECT unit, count(*) FILTER (outcome <> 'u') AS looked, count(*) AS asked
     FROM ${source("answers")} WHERE ${span} GROUP BY unit ORDER BY unit`,
    `SELECT unit, sum(late) AS late, sum(after_shift) AS after_shift, count(DISTINCT actor) AS hands
     FROM ${source("rounds")} WHERE ${span} GROUP BY unit ORDER BY unit`,
];

async function answersTo(questions) {
    const answers = [];
    for (const question of questions)
        answers.push((await database.runAndReadAll(question)).getRows());
    return answers;
}

const middle = (times) => times.sort((a, b) => a - b)[Math.floor(times.length / 2)].toFixed(3);

// By the clock and of the processor.
async function medianMs(questions) {
    const wall = [];
    const processor = [];
    for (let i = 0; i < 15; ++i) {
        const start = performance.now();
        const before = process.cpuUsage();
        await answersTo(questions);
        const used = process.cpuUsage(before);
        wall.push(performance.now() - start);
        processor.push((used.user + used.system) / 1000);
    }
    return `${middle(wall)} ${middle(processor)}`;
}

const table = (name) => name;
const file = (name) => `'${folder}/${name}.parquet'`;
const all = (source) => [...ofRounds(source), ...ofEntries(source)];
const took = [];
for (const questions of [ofRounds(table), ofRounds(file), all(table), all(file)])
    took.push(await medianMs(questions));
const gaps = (await answersTo(ofRounds(table)))[3].reduce((sum, row) => sum + Number(row[2]), 0);
const memory = Math.round(process.resourceUsage().maxRSS / 1024);
const version = (await database.runAndReadAll("SELECT version()")).getRows()[0][0];
console.log(`DuckDB ${version}: ${took.join(" ")} ${gaps} ${memory}`);
