/**
 * Draws the demo jobs of two invented agencies from the tables of edition 2018: jobs are data, not prose. Seeded, so
 * the same tables give the same bytes.
 *
 *   node make.mjs ../2018/*.csv    writes upper-vale.csv, lower-vale.csv and lower-vale.xlsx beside this file
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { citationsGoneWrong, crewForm, packages, places, remarks, untitled } from './habits.mjs';
import { writeWorkbook } from './workbook.mjs';

const JOBS_PER_AGENCY = 30;
const MOST_LINES = 40;
const TYPES = ['house', 'terrace', 'court', 'street'];
const TYPE_NAMES = { house: 'House lot', terrace: 'Terrace row', court: 'Apartment court', street: 'Street frontage' };
/** States in the order in which a line passes through them. */
const STATES = ['planned', 'in hand', 'done', 'inspected', 'signed', 'invoiced'];
/** The day on which the lists were taken. */
const TODAY = Date.UTC(2024, 8, 30);
const DAY = 86_400_000;

const tables = process.argv.slice(2);
if (tables.length === 0) throw new Error('Give the tables of edition 2018, in order: node make.mjs ../2018/*.csv');
const items = tables.flatMap(table => readTable(readFileSync(table, 'utf8')));
const byNumber = new Map(items.map(item => [item.number, item]));

const here = name => new URL(name, import.meta.url);
const upper = agency('U24', 2018_01);
const lower = agency('LV-24', 2018_02);
writeFileSync(here('upper-vale.csv'), `\uFEFF${toCsv(upperRows(upper))}`);
writeFileSync(here('lower-vale.csv'), toCsv(lowerRows(lower).map(row => row.map(cellText))));
writeFileSync(here('lower-vale.xlsx'), writeWorkbook('Jobs', lowerRows(lower)));

/** One agency's lines, job after job: `{job, address, type, number, title, quantity, state, date, who, remark}`. */
function agency(prefix, seed) {
  const draw = randomFrom(seed);
  const lines = [];
  const late = [];
  for (let n = 1; n <= JOBS_PER_AGENCY; n += 1) {
    // Small jobs are many, large ones few; the mean is near 20.
    const size = 8 + Math.floor(38 * draw() ** 2);
    const type = TYPES[[0, 1, 0, 2, 1, 3, 0, 2, 1, 0][n % 10]];
    const job = { job: `${prefix}-${String(n * 3 + Math.floor(draw() * 3)).padStart(3, '0')}`, type };
    job.address = pick(draw, places[type]).replace('#', () => String(1 + Math.floor(draw() * 60)));
    job.who = 1 + Math.floor(draw() * 3);
    const drawn = linesOf(draw, job, Math.min(size, MOST_LINES));
    // One job comes back at the foot of the list, as happens when someone forgot the handover papers.
    if (n === 12) late.push(...drawn.splice(-3));
    lines.push(...drawn);
  }
  return goWrong(draw, [...lines, ...late]);
}

function linesOf(draw, job, size) {
  const chosen = new Map();
  for (const workItem of workItems(draw, job.type)) {
    if (chosen.size >= size) break;
    const requirements = items.filter(item => item.parent === workItem.number && item.types.includes(job.type));
    if (draw() < 0.09) chosen.set(workItem.number, workItem);
    else for (const item of requirements) if (chosen.size < size && draw() < 0.88) chosen.set(item.number, item);
  }
  const order = new Map(items.map((item, at) => [item.number, at]));
  const sorted = [...chosen.values()].sort((a, b) => order.get(a.number) - order.get(b.number));
  const reached = draw() * 5.4 - 1.1;
  const quantities = new Map();
  const lines = sorted.map((item, at) => {
    if (!quantities.has(item.parent)) quantities.set(item.parent, quantityOf(draw, item.number));
    // What comes late in the catalog comes late in the job.
    const rank = Math.floor(reached + 1.4 - (2.2 * at) / sorted.length + (draw() - 0.5));
    const state = draw() < 0.035 ? 'not applicable' : STATES[Math.max(0, Math.min(STATES.length - 1, rank))];
    const ago = 4 + Math.floor((Math.max(rank, 0) + 2) * 14 + draw() * 20);
    return {
      ...job,
      number: item.number,
      title: item.title || untitled[item.number],
      short: crewForm(item.title || untitled[item.number]),
      quantity: quantities.get(item.parent),
      state,
      date: state === 'planned' ? undefined : TODAY - ago * DAY,
      remark: draw() < 0.16 ? pick(draw, remarks[state]) : '',
      plain: draw() < 0.55,
    };
  });
  if (draw() > 0.3 || size === MOST_LINES) return lines;
  // Some crews write a line twice when there are two of the thing.
  const at = Math.floor(draw() * lines.length);
  const again = { ...lines[at], title: `${lines[at].title}, second one`, short: `${lines[at].short} no. 2` };
  return lines.toSpliced(at + 1, 0, again);
}

/** The work items of one job in the order in which the crew thinks of them: the works ordered, then what goes with them. */
function workItems(draw, type) {
  const works = shuffled(draw, packages.works[type]).slice(0, 3).flat();
  const around = shuffled(draw, packages.around);
  const numbers = [...works.slice(0, 4), ...around.slice(0, 3), ...works.slice(4), ...around.slice(3)];
  return [...new Set(numbers)].map(number => byNumber.get(number)).filter(item => item.types.includes(type));
}

function quantityOf(draw, number) {
  const part = number[0];
  if (part === '5' || part === '6' || number.startsWith('7.1')) return `${4 + Math.floor(draw() * 60)} m²`;
  if (number.startsWith('2.1') || number.startsWith('8.1')) return `${3 + Math.floor(draw() * 24)} m`;
  return String(1 + Math.floor(draw() ** 3 * 4));
}

/** Puts about 3 % wrong citations in place of right ones, each at a line of its own. */
function goWrong(draw, lines) {
  const wrong = [...lines];
  const free = new Set(lines.flatMap((line, at) => (line.state === 'not applicable' ? [] : [at])));
  for (const slip of citationsGoneWrong) {
    const open = [...free].filter(at => !slip.type || wrong[at].type === slip.type);
    const near = open.filter(at => slip.near && wrong[at].number.startsWith(slip.near));
    const at = pick(draw, near.length > 0 ? near : open);
    free.delete(at);
    const line = wrong[at];
    wrong[at] = {
      ...line,
      number: slip.garble ? slip.garble(line.number) : slip.number,
      cell: slip.cell,
      title: slip.title ?? line.title,
      short: slip.title ?? line.short,
      remark: slip.remark ?? line.remark,
    };
  }
  return wrong;
}

function upperRows(lines) {
  const head = ['Job', 'Address', 'Type', 'Item', 'Description', 'Qty', 'State', 'Date', 'Crew'];
  const rows = lines.map(line => [
    line.job,
    line.address,
    line.type,
    line.number,
    line.plain ? line.title : line.short,
    line.quantity,
    line.state[0].toUpperCase() + line.state.slice(1),
    line.date ? isoDate(line.date).split('-').reverse().join('.') : '',
    `Crew ${line.who}`,
  ]);
  return [head, ...rows];
}

function lowerRows(lines) {
  const head = 'job_no,site,dwelling_type,req_ref,what,status,checked_on,inspector,remarks'.split(',');
  const checked = ['done', 'inspected', 'signed', 'invoiced'];
  const rows = lines.map(line => [
    line.job,
    line.address,
    TYPE_NAMES[line.type],
    line.cell ?? line.number,
    line.plain ? line.short : line.title,
    line.state,
    line.date && checked.includes(line.state) ? { date: isoDate(line.date), shown: isoDate(line.date) } : '',
    ['north round', 'south round', 'weekend round'][line.who - 1],
    line.remark,
  ]);
  return [head, ...rows];
}

/** What a cell shows: a number cell has lost its trailing zero, a date cell shows its own format. */
function cellText(cell) {
  return typeof cell === 'object' ? cell.shown : String(cell);
}

function isoDate(time) {
  return new Date(time).toISOString().slice(0, 10);
}

function toCsv(rows) {
  const quote = cell => (/[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return `${rows.map(row => row.map(quote).join(',')).join('\n')}\n`;
}

/** Rows of the edition's table with `types` resolved from the nearest ancestor that names some. */
function readTable(text) {
  const records = [[]];
  for (const [, cell, end] of text.replace(/^\uFEFF/, '').matchAll(/("(?:[^"]|"")*"|[^",\r\n]*)(,|\r?\n|$)/g)) {
    records.at(-1).push(cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell);
    if (end !== ',') records.push([]);
  }
  const [head, ...body] = records.filter(cells => cells.length > 1);
  const known = new Map();
  return body.map(cells => {
    const row = Object.fromEntries(head.map((name, i) => [name, cells[i] ?? '']));
    const types = row.applies_to ? row.applies_to.split('|') : (known.get(row.parent) ?? TYPES);
    known.set(row.number, types);
    return { number: row.number, parent: row.parent, title: row.title, types };
  });
}

/** A small generator (mulberry32) of numbers in [0, 1). */
function randomFrom(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

function pick(draw, list) {
  return list[Math.floor(draw() * list.length)];
}

function shuffled(draw, list) {
  return list
    .map(value => ({ value, key: draw() }))
    .sort((a, b) => a.key - b.key)
    .map(({ value }) => value);
}
