// How far do the odds of the model hold? Judges recordings of the four modelled worlds, fits the constants that turn the model's odds into
// probabilities, writes them to `packages/core/src/score/calibration.ts` and prints what is then told beside what is right.
// `node scripts/calibrate.mjs [how many times as many recordings]`
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runInThisContext } from 'node:vm';
import { bundledScript } from './bundledScript.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const score = join(root, 'packages', 'core', 'src', 'score');
const times = Number(process.argv[2] ?? 1);

/** Seeds that may be looked at, and how many of each world: more of those that are judged less well, and faster. */
const sets = [
  { world: 'plate', from: 5000, cases: 400 },
  { world: 'habits', from: 5000, cases: 400 },
  { world: 'first', from: 1_010_000, cases: 200 },
  { world: 'second', from: 10_000, cases: 100 },
];

/** What the scorer weighs causes by is kept beside its score. */
const spied = '\0weighCauses';
const entry = '\0entry';
const quoted = (...path) => JSON.stringify(join(...path));
const modules = {
  [entry]: `
export { InputError, scoreSweep } from ${quoted(score, '..', 'index.ts')};
export { fairWorlds } from ${quoted(root, 'tests', 'corpus', 'worlds', 'fairCase.ts')};
export { calibration } from ${quoted(score, 'calibration.ts')};
export { chanceOfDepartures, confidence, groundsOf } from ${quoted(score, 'confidence.ts')};
export { sharesOf, weighCauses } from ${quoted(score, 'weighCauses.ts')};`,
  [spied]: `
import { sharesOf, weighCauses as weigh } from ${quoted(score, 'weighCauses.ts')};
export { sharesOf };
export function weighCauses(evidence) {
  globalThis.weighed = evidence;
  return weigh(evidence);
}`,
};

const script = await bundledScript('core', {
  resolveId(id, importer = '') {
    if (id === 'virtual:entry') return entry;
    const isScorers = importer.replaceAll('\\', '/').endsWith('score/scoreSweep.ts');
    return id === './weighCauses.js' && isScorers ? spied : null;
  },
  load: (id) => modules[id] ?? null,
});
runInThisContext(script);
const { InputError, scoreSweep, fairWorlds, calibration } = globalThis.core;
const { chanceOfDepartures, confidence, groundsOf, sharesOf, weighCauses } = globalThis.core;

/** What was said of a recording, with what is fair; nothing where it was refused. */
function judged(world, seed) {
  const { sweep, expected, told, verdicts, causes } = fairWorlds[world](seed);
  globalThis.weighed = undefined;
  try {
    const score = scoreSweep(sweep, expected, told);
    return [{ score, verdicts, causes, evidence: globalThis.weighed }];
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

const cases = sets.flatMap(({ world, from, cases }) =>
  Array.from({ length: cases * times }, (_, i) => judged(world, from + i)).flat(),
);

/** What the odds of a score rest on, as the constants now are. */
function grounded({ score, evidence }) {
  const shares = evidence?.events.length > 0 ? sharesOf(weighCauses(evidence)) : undefined;
  return { shares, judged: { ...score, interference: shares?.interference ?? 0 } };
}

// Causes: the power by which the leading ones are likeliest right and wrong as they are.

const ofDepartures = ['track', 'connection', 'interference'];
const decided = cases.filter(
  ({ score, causes }) => causes && ofDepartures.includes(score.causes[0].cause),
);

function toldCauses() {
  return decided.map((one) => {
    const { shares, judged } = grounded(one);
    const [cause, share] = Object.entries(shares).toSorted((a, b) => b[1] - a[1])[0];
    return { told: share * chanceOfDepartures(judged), right: one.causes.includes(cause) };
  });
}

const logLikelihood = (told) =>
  told.reduce((sum, { told, right }) => sum + Math.log(right ? told : 1 - told), 0);

function fitCauses() {
  let best = { likelihood: Number.NEGATIVE_INFINITY };
  for (let power = 0.1; power < 1.01; power += 0.05) {
    calibration.causes.power = Number(power.toFixed(2));
    const likelihood = logLikelihood(toldCauses());
    if (likelihood > best.likelihood) best = { likelihood, power: calibration.causes.power };
  }
  calibration.causes.power = best.power;
}

// Verdicts: logistic regression for each ground, over the verdicts that rest on it alone.

/** Solves a symmetric system of few equations by elimination. */
function solved(matrix, right) {
  const rows = matrix.map((row, i) => [...row, right[i]]);
  for (let i = 0; i < rows.length; i++)
    for (let k = 0; k < rows.length; k++) {
      if (k === i) continue;
      const factor = rows[k][i] / rows[i][i];
      rows[k] = rows[k].map((value, j) => value - factor * rows[i][j]);
    }
  return rows.map((row, i) => row[rows.length] / row[i]);
}

const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Newton's method; slopes per standard deviation are held near nothing (normal, deviation 1), and one more was right and one wrong. */
function fitGround(rows) {
  const columns = rows[0].numbers.map((_, i) => rows.map(({ numbers }) => numbers[i]));
  const means = columns.map(mean);
  const deviations = columns.map((column, i) =>
    Math.max(1e-9, Math.sqrt(mean(column.map((value) => (value - means[i]) ** 2)))),
  );
  const scaled = (numbers) => [1, ...numbers.map((one, i) => (one - means[i]) / deviations[i])];
  const data = [
    ...rows.map(({ numbers, right }) => ({ x: scaled(numbers), y: Number(right) })),
    ...[0, 1].map((y) => ({ x: scaled(means), y })),
  ];
  const size = columns.length + 1;
  let slopes = new Array(size).fill(0);
  for (let round = 0; round < 50; round++) {
    const gradient = slopes.map((slope, i) => (i === 0 ? 0 : -slope));
    const curvature = slopes.map((_, i) => slopes.map((_, k) => (i === k && i > 0 ? 1 : 0)));
    for (const { x, y } of data) {
      const p = 1 / (1 + Math.exp(-x.reduce((sum, one, i) => sum + one * slopes[i], 0)));
      for (let i = 0; i < size; i++) {
        gradient[i] += x[i] * (y - p);
        for (let k = 0; k < size; k++) curvature[i][k] += x[i] * x[k] * p * (1 - p);
      }
    }
    const step = solved(curvature, gradient);
    slopes = slopes.map((slope, i) => slope + step[i]);
  }
  const plain = slopes.slice(1).map((slope, i) => slope / deviations[i]);
  const base = slopes[0] - plain.reduce((sum, slope, i) => sum + slope * means[i], 0);
  return [base, ...plain].map((one) => Number(one.toFixed(2)));
}

const told = cases.filter(({ score }) => score.verdict !== 'inconclusive');

function fitGrounds() {
  const all = told.map((one) => ({
    grounds: groundsOf(one.score.verdict, grounded(one).judged),
    right: one.verdicts.includes(one.score.verdict),
  }));
  for (const kind of Object.keys(calibration.grounds)) {
    const rows = all
      .filter(({ grounds }) => grounds.length === 1 && grounds[0].kind === kind)
      .map(({ grounds, right }) => ({ numbers: grounds[0].numbers, right }));
    calibration.grounds[kind] = fitGround(rows);
    console.log(`${kind}: ${rows.filter((row) => row.right).length} of ${rows.length} right`);
  }
}

// The odds of interference are among what a failing verdict rests on, so both are fitted in turn.
fitGrounds();
fitCauses();
fitGrounds();

/** Told odds beside what was right of them, by tenths and above. */
function printTold(name, told) {
  console.log(`\n${name}: logarithm of the likelihood ${logLikelihood(told).toFixed(2)}`);
  const borders = [0, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 1];
  for (const [i, low] of borders.slice(0, -1).entries()) {
    const within = told.filter(({ told }) => told >= low && told < borders[i + 1]);
    if (within.length === 0) continue;
    const percent = (share) => (100 * share).toFixed(1);
    const right = within.filter((one) => one.right).length;
    console.log(
      `  ${percent(low)} to ${percent(borders[i + 1])} %: told ${percent(mean(within.map(({ told }) => told)))} %, right ${percent(right / within.length)} % (${right}/${within.length})`,
    );
  }
}

printTold('causes', toldCauses());
printTold(
  'verdicts',
  told.map((one) => ({
    told: confidence(one.score.verdict, grounded(one).judged),
    right: one.verdicts.includes(one.score.verdict),
  })),
);

const file = join(score, 'calibration.ts');
const lines = Object.entries(calibration.grounds).map(
  ([kind, numbers]) => `    ${kind.includes('-') ? `'${kind}'` : kind}: [${numbers.join(', ')}],`,
);
const written = `export const calibration = {
  causes: { power: ${calibration.causes.power} },
  grounds: {
${lines.join('\n')}
  },
};
`;
writeFileSync(
  file,
  readFileSync(file, 'utf8').replace(/^export const calibration[\s\S]*/m, written),
);
