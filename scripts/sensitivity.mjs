// What does each number that a verdict rests on do? Doubles and halves every one in turn, scores a fixed set of recordings and prints how
// many scores changed; fails where a number changed none. `node scripts/sensitivity.mjs [part of a name]`
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runInThisContext } from 'node:vm';
import { bundledScript } from './bundledScript.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const source = join(root, 'packages', 'core', 'src');
const folders = [
  ...['motion', 'path', 'contact', 'capture', 'departures', 'causes', 'score', 'movement'],
];
const wanted = process.argv[2] ?? '';

/** Short recordings of each kind. */
const recordingsOfEach = 20;
const mostSamples = 12_000;
/** How long scoring the set may take with a number changed, ms: a step of nearly nothing may never arrive. */
const patience = 60_000;

/** Numbers that may change nothing here, with the reason. */
const allowed = {
  'capture/checkRecorder.ts leastReading': 'refuses what is no recorder',
  'capture/checkUnread.ts mostRows': 'refuses what is no recording',
  'capture/limits.ts enough': 'bounds the work on long recordings only',
  'capture/noiseLevel.ts ninetyPercentRms': 'mathematics',
  'motion/predict.ts short': 'mathematics: below it a series rounds less',
  'path/decode.ts anywhere.level': 'mathematics: the mean of what lies evenly between the stops',
  'path/decode.ts anywhere.variance': 'mathematics: its variance',
  'score/morePasses.ts wantedRatio': 'says how many more passes, no part of a verdict',
  'score/morePasses.ts wantedChance': 'says how many more passes, no part of a verdict',
  'score/morePasses.ts mostPasses': 'says how many more passes, no part of a verdict',
  'score/morePasses.ts mostEvents': 'says how many more passes, no part of a verdict',
  'score/morePasses.ts goldenRatio': 'mathematics',
  'score/chooseAdvice.ts leastOfLeading': 'says what to do next, no part of a verdict',
  'score/findCauses.ts leastWeight': 'says which causes are named after the leading one',
  'score/confidence.ts least': 'bounds how sure it is said to be, no part of a verdict',
  'score/confidence.ts most': 'bounds how sure it is said to be, no part of a verdict',
  'score/couldShow.ts cells':
    'how finely it is said what could have been seen, no part of a verdict',
};

/** A statement at the top of a file that declares a value: up to the line that closes it. */
const declaration = /^(?:export )?const (\w+)[^=\n]*= (?:[^\n]*;$|[[{]\n[\s\S]*?\n[\]}][^\n]*;$)/gm;
/** A number, the name of its field before it; not the divisor or factor of a quotient, nor a part of a name. */
const number = /(?:(\w+): )?(?<![\w.]|[*/] )(\d[\d_]*(?:\.\d+)?(?:e-?\d+)?)(?![\w.])/g;

/** Every number of a file: where it stands and what it is called. */
function numbersOf(file) {
  const text = readFileSync(join(source, file), 'utf8');
  const found = [];
  for (const { 0: statement, 1: name, index } of text.matchAll(declaration)) {
    if (/=>|function/.test(statement)) continue;
    // Numbers of states are names, not limits.
    if (/^[A-Z]{3,}$/.test(name)) continue;
    const start = statement.indexOf('=');
    const plain = statement
      .slice(start)
      .replace(/\/\*[\s\S]*?\*\/|\/\/.*|'[^']*'/g, (words) => ' '.repeat(words.length));
    const inside = [...plain.matchAll(number)].filter(([, , digits]) => asNumber(digits) !== 0);
    for (const [i, match] of inside.entries()) {
      const [whole, field, digits] = match;
      const part = field ? `.${field}` : inside.length > 1 ? `[${i}]` : '';
      found.push({
        name: `${file} ${name}${part}`,
        at: index + start + match.index + whole.length - digits.length,
        digits,
      });
    }
  }
  return found;
}

const asNumber = (digits) => Number(digits.replaceAll('_', ''));

function sourceFiles() {
  const files = folders.flatMap((folder) => {
    try {
      return readdirSync(join(source, folder), { recursive: true }).map((file) =>
        join(folder, file),
      );
    } catch {
      return [];
    }
  });
  return (
    files
      // The odds told are no part of a verdict; `calibrate.mjs` says what its constants do.
      .filter((file) => /(?<!\.test|calibration)\.ts$/.test(file))
      .map((file) => file.replaceAll('\\', '/'))
  );
}

const numbers = sourceFiles().flatMap(numbersOf);
const placeholder = (i) => `limitTried${i}_`;

/** The file with a name in place of each of its numbers, to be filled in later. */
function withPlaceholders(file) {
  let text = readFileSync(join(source, file), 'utf8');
  for (let i = numbers.length - 1; i >= 0; i--) {
    const { name, at, digits } = numbers[i];
    if (name.startsWith(`${file} `))
      text = text.slice(0, at) + placeholder(i) + text.slice(at + digits.length);
  }
  return text;
}

/** A script that leaves in a global what the entry exports, with placeholders for the constants where they are to be changed. */
const bundled = (entry, global, changed) =>
  bundledScript(global, {
    resolveId: (id) => (id === 'virtual:entry' ? '\0virtual:entry' : null),
    load(id) {
      if (id === '\0virtual:entry') return entry;
      const file = id.startsWith(source) && id.slice(source.length + 1).replaceAll('\\', '/');
      return changed && file && folders.some((folder) => file.startsWith(`${folder}/`))
        ? withPlaceholders(file)
        : null;
    },
  });

const corpus = (path) => JSON.stringify(join(root, 'tests', 'corpus', path));
const players = await bundled(
  `export { playPlate } from ${corpus('plate/playPlate.ts')};
export { playHabit } from ${corpus('habits/playHabit.ts')};
export { replay } from ${corpus('runCase.ts')};
export { expectation } from '@truesweep/core';`,
  'players',
  false,
);
runInThisContext(players);
const { playPlate, playHabit, replay, expectation } = globalThis.players;

function firstCase(seed) {
  const { sweep, plan } = replay(seed);
  return { sweep, expected: expectation(plan.nominal, plan.tolerances), told: plan.told };
}

/** The first short ones from a seed on. */
function shortOnes(play, seed) {
  const short = [];
  for (; short.length < recordingsOfEach; seed++) {
    const { sweep, expected, told } = play(seed);
    if (sweep.time.length <= mostSamples) short.push({ sweep, expected, told });
  }
  return short;
}

globalThis.recordings = [
  ...shortOnes(playPlate, 30_000),
  ...shortOnes(playHabit, 30_000),
  ...shortOnes(firstCase, 3_000_000),
];

const scorer = await bundled(`export { scoreSweep } from '@truesweep/core';`, 'scorer', true);

/** Verdict, cause and kinds of every recording, with one number changed. */
function scores(changed, value) {
  const code = scorer.replace(/limitTried(\d+)_/g, (_, i) =>
    Number(i) === changed ? String(value) : numbers[i].digits,
  );
  try {
    runInThisContext(code);
    return runInThisContext(
      `recordings.map(({ sweep, expected, told }) => {
  try {
    const { verdict, causes, findings } = scorer.scoreSweep(sweep, expected, told);
    return [verdict, causes[0]?.cause, ...findings.map(({ kind }) => kind)].join(' ');
  } catch (error) {
    return String(error);
  }
})`,
      { timeout: patience },
    );
  } catch (error) {
    return globalThis.recordings.map(() => String(error));
  }
}

/** A whole number stays one. */
const changes = (value) =>
  Number.isInteger(value)
    ? [2 * value, Math.max(1, Math.floor(value / 2))]
    : [2 * value, value / 2];

const unchanged = scores();
if (new Set(unchanged).size < 5)
  throw new Error(`The set is not scored as it should be: ${unchanged[0]}`);
const rows = [];
for (const [i, { name, digits }] of numbers.entries()) {
  if (!name.includes(wanted)) continue;
  const value = asNumber(digits);
  const counts = changes(value).map(
    (other) => scores(i, other).filter((score, at) => score !== unchanged[at]).length,
  );
  rows.push({ name, counts });
  const reason = counts.some((count) => count > 0) ? '' : (allowed[name] ?? 'CHANGES NOTHING');
  process.stdout.write(
    `${name.padEnd(60)}${digits.padStart(10)}  doubled ${String(counts[0]).padStart(2)}, halved ${String(counts[1]).padStart(2)} of ${unchanged.length}  ${reason}\n`,
  );
}
const idle = rows.filter(
  ({ name, counts }) => counts.every((count) => count === 0) && !(name in allowed),
);
process.stdout.write(`\n${rows.length} numbers, ${idle.length} of them change nothing\n`);
if (idle.length > 0 || rows.length === 0) process.exitCode = 1;
