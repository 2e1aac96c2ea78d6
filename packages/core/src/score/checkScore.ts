import { type FieldRules, listOf } from '../fields.js';
import { between, oneOf, text, wholeBetween } from '../guard.js';

const most = 1e12;
const any = () => {};
const number = between(-most, most);
const count = wholeBetween(0, most);
const size = between(0, most);

/** Refuses what no finding can be; the words by which it is told are not looked at. */
const findingRules: FieldRules = {
  kind: ['dropout', 'spike', 'step', 'dead-spot', 'rough'],
  start: number,
  end: number,
  travel: number,
  depth: number,
  depthOfSpan: size,
  depthOfSource: size,
  went: any,
  'evidence?': number,
  during: any,
};

const checkRules: FieldRules = {
  check: text,
  outcome: ['conforms', 'marginal', 'fails', 'cannot-tell', 'not-judged'],
  unit: any,
  'measured?': number,
  'lowLimit?': number,
  'highLimit?': number,
  'uncertainty?': size,
  'margin?': number,
  'conformance?': between(0, 1),
  limitFrom: any,
};

const strokeRules: FieldRules = {
  direction: ['opening', 'closing'],
  start: number,
  end: number,
  from: number,
  to: number,
};

const snapRules: FieldRules = {
  start: number,
  touch: number,
  settled: number,
  from: number,
  rebounds: any,
};

const spotRules: FieldRules = {
  travel: number,
  findings: listOf(count, 1),
  passes: count,
  seen: count,
};

/** What a comparison reads of a score. */
export const scoreRules: FieldRules = {
  checks: listOf(checkRules),
  findings: listOf(findingRules, 0, 1e7),
  verdict: (value, path) => oneOf(value, ['pass', 'marginal', 'fail', 'inconclusive'], path),
  'confidence?': any,
  causes: any,
  advice: any,
  'abrupt?': any,
  spots: listOf(spotRules, 0, 1e7),
  'morePasses?': any,
  strokes: listOf(strokeRules, 0, 1e7),
  rests: any,
  snaps: listOf(snapRules, 0, 1e7),
  quality: any,
  couldShow: any,
  coverage: any,
  closedReadings: any,
  testsNotDone: any,
  supplyAssumed: any,
};

/** What trouble codes read of a score, or of its checks and findings alone. */
export const judgedRules: FieldRules = Object.fromEntries(
  Object.entries(scoreRules).map(([name, rule]) =>
    name === 'checks' || name === 'findings' || name.endsWith('?')
      ? [name, rule]
      : [`${name}?`, rule],
  ),
);
