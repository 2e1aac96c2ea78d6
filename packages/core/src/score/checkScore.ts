import { checkField, checkFields, type FieldRule, type FieldRules, listOf } from '../fields.js';
import { between, text, wholeBetween, yesOrNo } from '../guard.js';
import type { Score } from './score.js';

const most = 1e12;
const number = between(-most, most);
const count = wholeBetween(0, most);
const size = between(0, most);
const part = between(0, 1);
const pair = listOf(number, 2, 2);
const many = 1e7;

const findings = listOf(
  {
    kind: ['dropout', 'spike', 'step', 'dead-spot', 'rough'],
    start: number,
    end: number,
    travel: number,
    'unplaced?': yesOrNo,
    depth: number,
    depthOfSpan: size,
    depthOfSource: size,
    went: ['to-rest-level', 'toward-rest-level', 'to-broken-lead-level', 'elsewhere'],
    'evidence?': number,
    during: ['opening', 'closing', 'rest'],
  },
  0,
  many,
);

const checks = listOf({
  check: text,
  outcome: ['conforms', 'marginal', 'fails', 'cannot-tell', 'not-judged'],
  unit: ['V', 's', '1', 'count'],
  'measured?': number,
  'lowLimit?': number,
  'highLimit?': number,
  'uncertainty?': size,
  'margin?': number,
  'conformance?': number,
  limitFrom: ['criteria', 'expected-window', 'recorder'],
});

const returns: FieldRules = { count, mean: number, range: size, 'deviation?': size };
const level = { 'low?': number, 'high?': number };

const quality: FieldRules = {
  interval: size,
  jitter: size,
  longestGap: size,
  gaps: count,
  repeated: count,
  samples: count,
  duration: size,
  sampling: ['picked', 'averaged', 'peak-kept', 'interpolated'],
  sampledEvery: size,
  smoothedOver: size,
  disordered: count,
  stamps: {
    clock: ['stamped', 'even', 'spread'],
    moved: size,
    pairs: count,
    strayed: count,
    restarts: count,
  },
  resolution: size,
  noise: size,
  'ripple?': { hertz: size, volts: size },
  clip: { ...level, 'perhaps?': level },
  visible: (value, path) => {
    if (value !== 0) between(1e-15, most, 'V')(value, path);
  },
  visibleSetBy: ['noise', 'resolution', 'span', 'ripple'],
  shortestDropout: size,
  dropoutChance: { one: part, wanted: part },
};

const scoreRules: FieldRules = {
  verdict: ['pass', 'marginal', 'fail', 'inconclusive'],
  'confidence?': part,
  causes: listOf({ cause: text, weight: part }),
  'explanations?': listOf({
    sources: listOf(['track', 'connection', 'interference']),
    before: part,
    form: number,
    place: number,
    weight: part,
  }),
  advice: listOf(text),
  checks,
  findings,
  'abrupt?': listOf({ start: number, end: number, depth: number }, 0, many),
  spots: listOf(
    { travel: number, findings: listOf(count, 1, many), passes: count, seen: count },
    0,
    many,
  ),
  'morePasses?': count,
  'unitsThatFit?': listOf({
    column: ['signal', 'time'],
    unit: ['mV', 'counts', '%', 'ms', 'µs'],
    'bits?': count,
    'voltsPerUnit?': number,
  }),
  restsOn: {
    looks: count,
    looksAskedFor: count,
    snaps: count,
    snapsAskedFor: count,
    missedChance: number,
  },
  strokes: listOf(
    { direction: ['opening', 'closing'], start: number, end: number, from: number, to: number },
    0,
    many,
  ),
  rests: listOf({ start: number, end: number, travel: number, volts: number }, 0, many),
  snaps: listOf(
    { start: number, touch: number, settled: number, from: number, rebounds: listOf(number) },
    0,
    many,
  ),
  quality,
  couldShow: { blind: listOf(pair), 'narrowestSpot?': number },
  coverage: { opening: listOf(count), closing: listOf(count) },
  closedReadings: { 'byHand?': returns, 'bySpring?': returns, 'hysteresis?': number },
  testsNotDone: listOf(['harness-flexed', 'housing-tapped', 'warmed']),
  supplyAssumed: yesOrNo,
  uncertaintyAssumed: yesOrNo,
};

/**
 * Refuses what is no judged sweep, such as one that came from a file: a missing, unknown or impossible field, or a spot whose findings the
 * score doesn't hold.
 *
 * @param score What `scoreSweep` gave.
 * @param path What it is called in refusals.
 * @param only The fields that are looked at, where only a part of a score is needed; all when left out.
 * @throws InputError with the path of the field, such as `score.findings[3].depth`.
 *
 * @example
 * let path;
 * try {
 *   checkScore({ verdict: 'good' }, 'score');
 * } catch (error) {
 *   path = error.path;
 * }
 * path // => 'score.verdict'
 */
export function checkScore(
  score: Partial<Score>,
  path = 'score',
  only: readonly (keyof Score)[] = Object.keys(scoreRules).map(nameOf) as (keyof Score)[],
): void {
  text(path, 'path');
  listOf(Object.keys(scoreRules).map(nameOf))(only, 'only');
  const rules: Record<string, FieldRule> = {};
  for (const [name, rule] of Object.entries(scoreRules)) {
    const isWanted = only.includes(nameOf(name) as keyof Score);
    rules[isWanted ? name : `${nameOf(name)}?`] = isWanted ? rule : () => {};
  }
  checkFields(score, path, rules);
  if (!only.includes('spots') || !only.includes('findings')) return;
  score.spots!.forEach(({ seen, passes, findings: named }, i) => {
    const at = `${path}.spots[${i}]`;
    checkField(seen, `${at}.seen`, wholeBetween(0, passes));
    named.forEach((one, k) => {
      checkField(one, `${at}.findings[${k}]`, wholeBetween(0, score.findings!.length - 1));
    });
  });
}

function nameOf(field: string): string {
  return field.replace('?', '');
}
