import { listOf } from '../fields.js';
import type { ReadingLimits } from '../judgement/checkLimits.js';
import { compareOhms, type OhmsSource } from '../judgement/compareOhms.js';
import { compareWithin, toldLimits } from '../judgement/compareWithin.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import type { Judgement, ReadingCheck } from '../judgement/readingCheck.js';
import { readingRule, states, type TwoStateAt, type TwoStateReading } from './twoStateReading.js';
import { checkTwoStateSensor, type TwoStateSensor } from './twoStateSensor.js';

/** What can make a comparison uncertain. */
export type TwoStateSource = OhmsSource | 'supply' | 'angle';

/** A reading of a state beside that state's window, or the angle at which it changed; an open contact has ∞ Ω. */
export type TwoStateCheck = ReadingCheck<
  TwoStateAt | 'change-angle',
  'V' | '1' | 'Ω' | '°',
  TwoStateSource
>;

/** What to do next. */
export type TwoStateAdvice =
  /** A state that was not read yet, or an angle. */
  | `read-${TwoStateAt | 'change-angle'}`
  /** Each state reads as the other should: compare the windows, the plug's pins and how the sensor is mounted with the manual. */
  | 'states-swapped'
  /** Operated it reads as at rest: go beyond the angle and hold it there a second or more, for such sensors are damped. */
  | 'hold-longer'
  /** Back at rest it still reads as operated: switch the key off and on, and ask the manual whether it latches. */
  | 'cycle-key'
  /** What decides is the meter's uncertainty. */
  | 'better-meter'
  /** What decides is the uncertainty of the supply. */
  | 'measure-supply'
  /** What decides is the test leads: read them and take them off. */
  | 'measure-leads'
  /** What decides is the uncertainty of the angle. */
  | 'better-angle'
  /** It fails: read the failing state once more. */
  | 'read-again'
  /** It fails again: replace it. */
  | 'replace-sensor';

/** What a pass does not say. */
export type TwoStateUnsaid =
  /** How it behaves on a machine that shakes. */
  | 'vibration'
  /** Whether it bounces when it changes. */
  | 'bounce'
  /** Whether its contact carries its current. */
  | 'under-load'
  /** At which angle it changes. */
  | 'change-angle'
  /** At which angle it changes to the other direction. */
  | 'change-angle-other-way'
  /** Whether it answers to the other direction. */
  | 'other-way';
/** What its readings say. */
export type TwoStateJudgement = Judgement<TwoStateCheck, TwoStateAdvice, TwoStateUnsaid>;

const units = { volts: 'V', ratio: '1', ohms: 'Ω' } as const;

const adviceFor: Readonly<Record<TwoStateSource, TwoStateAdvice>> = {
  meter: 'better-meter',
  supply: 'measure-supply',
  leads: 'measure-leads',
  angle: 'better-angle',
};

/**
 * Judges a sensor or switch of two states: a lean-angle or side-stand switch, a contact.
 *
 * Each state that the sensor is asked for must be read: at rest, operated, the other way too where it must answer to both, back at rest, and, where it
 * latches, after the key was off and on again. What lies between the windows, or in the wrong one, fails. A state that nobody read can't be told, and the advice
 * says which. One that latches still reads as operated when it is back at rest.
 *
 * Method: comparison as in `judgeReading`; leads as in {@link judgeWinding}. That the windows, the angle, the latch and both leans are to be checked: published
 * service manuals. Hold it a second or more (from memory).
 *
 * @param readings 0 to 1000, in any order.
 * @throws InputError at `sensor…`, `out-of-order` for windows that overlap; at `readings…`, `unexpected` for an angle at a state that isn't operated.
 *
 * @example
 * const sensor = {
 *   kind: 'volts', rest: { low: 0.4, high: 1.4 }, operated: { low: 3.7, high: 4.4 }, latched: true, bothWays: true,
 * };
 * const read = (state, value) => ({ state, value, uncertainty: 0.02 });
 * const some = judgeTwoState(sensor, [read('rest', 1.0), read('operated', 4.1), read('back-at-rest', 4.1)]);
 * some.verdict // => 'inconclusive'
 * some.advice // => ['read-operated-other-way', 'read-key-cycled']
 */
export function judgeTwoState(
  sensor: TwoStateSensor,
  readings: readonly TwoStateReading[],
): TwoStateJudgement {
  checkTwoStateSensor(sensor);
  listOf(readingRule(sensor.kind), 0, 1000)(readings, 'readings');
  const checks = [
    ...readings.flatMap((reading, i) => {
      const check = stateCheck(sensor, reading, i);
      const angle = angleCheck(sensor, reading, i);
      return angle ? [check, angle] : [check];
    }),
    ...missing(sensor, readings),
  ];
  const verdict = decideVerdict(checks);
  const advice = adviceOn(sensor, checks);
  return {
    verdict,
    checks,
    advice: verdict === 'fail' ? [...advice, 'read-again', 'replace-sensor'] : advice,
    unsaid: unsaidOf(sensor, readings),
  };
}

/** The states that must be read. */
function asked({ latched, bothWays }: TwoStateSensor): readonly TwoStateAt[] {
  return states.filter(
    (state) => (state !== 'operated-other-way' || bothWays) && (state !== 'key-cycled' || latched),
  );
}

/** What it must read in a state. */
function windowOf({ rest, operated, latched }: TwoStateSensor, state: TwoStateAt): ReadingLimits {
  const isOperated = /^operated/.test(state) || (state === 'back-at-rest' && latched);
  return isOperated ? operated : rest;
}

function stateCheck(sensor: TwoStateSensor, reading: TwoStateReading, at: number): TwoStateCheck {
  return {
    check: reading.state,
    reading: at,
    unit: units[sensor.kind],
    ...compared(sensor.kind, reading, windowOf(sensor, reading.state)),
  };
}

function compared(
  kind: TwoStateSensor['kind'],
  { value, uncertainty, supply = 1, supplyUncertainty = 0, leads }: TwoStateReading,
  window: ReadingLimits,
) {
  if (kind === 'ohms') {
    return compareOhms({ ohms: value, uncertainty, ...(leads !== undefined && { leads }) }, window);
  }
  const measured = value / supply;
  return compareWithin<TwoStateSource>(measured, window, [
    { name: 'meter', sensitivity: 1 / supply, uncertainty },
    { name: 'supply', sensitivity: measured / supply, uncertainty: supplyUncertainty },
  ]);
}

function angleCheck(
  { changesBetween }: TwoStateSensor,
  { changedAt, angleUncertainty: uncertainty = 0 }: TwoStateReading,
  reading: number,
): TwoStateCheck | undefined {
  if (!changesBetween || changedAt === undefined) return undefined;
  const inputs = [{ name: 'angle', sensitivity: 1, uncertainty }] as const;
  const check = { check: 'change-angle', reading, unit: '°' } as const;
  return { ...check, ...compareWithin<TwoStateSource>(changedAt, changesBetween, inputs) };
}

/** What must be read and was not, each as a check that can't tell. */
function missing(
  sensor: TwoStateSensor,
  readings: readonly TwoStateReading[],
): readonly TwoStateCheck[] {
  const open = (
    check: TwoStateCheck['check'],
    unit: TwoStateCheck['unit'],
    limits: ReadingLimits,
  ): TwoStateCheck => ({ check, outcome: 'cannot-tell', unit, ...toldLimits(limits) });
  const { kind, changesBetween } = sensor;
  const checks = asked(sensor)
    .filter((state) => readings.every((reading) => reading.state !== state))
    .map((state) => open(state, units[kind], windowOf(sensor, state)));
  if (changesBetween && readings.every(({ changedAt }) => changedAt === undefined))
    checks.push(open('change-angle', '°', changesBetween));
  return checks;
}

function adviceOn(
  sensor: TwoStateSensor,
  checks: readonly TwoStateCheck[],
): readonly TwoStateAdvice[] {
  const advice = new Set<TwoStateAdvice>();
  const { rest, operated, latched } = sensor;
  const read = checks.filter(({ measured, unit }) => measured !== undefined && unit !== '°');
  const wrong = read.filter((check) => {
    const right = windowOf(sensor, check.check as TwoStateAt);
    return isIn(check, right === rest ? operated : rest);
  });
  if (
    wrong.length === read.length &&
    wrong.some((check) => isIn(check, rest)) &&
    wrong.some((check) => isIn(check, operated))
  ) {
    advice.add('states-swapped');
  } else {
    for (const { check } of wrong) {
      if (/^operated/.test(check)) advice.add('hold-longer');
      if (check === 'back-at-rest' && !latched) advice.add('cycle-key');
    }
  }
  for (const { check, measured, outcome, mostUncertain } of checks) {
    if (measured === undefined) advice.add(`read-${check}`);
    else if (mostUncertain && /marginal|cannot/.test(outcome)) advice.add(adviceFor[mostUncertain]);
  }
  return [...advice];
}

function isIn(
  { measured }: TwoStateCheck,
  { low = -Infinity, high = Infinity }: ReadingLimits,
): boolean {
  return measured! >= low && measured! <= high;
}

function unsaidOf(
  { kind, bothWays, changesBetween }: TwoStateSensor,
  readings: readonly TwoStateReading[],
): readonly TwoStateUnsaid[] {
  const angled = new Set(
    readings.filter(({ changedAt }) => changedAt !== undefined).map(({ state }) => state),
  );
  return [
    'vibration',
    'bounce',
    ...(kind === 'ohms' ? (['under-load'] as const) : []),
    ...(changesBetween ? [] : (['change-angle'] as const)),
    ...(changesBetween && bothWays && angled.size === 1
      ? (['change-angle-other-way'] as const)
      : []),
    ...(bothWays ? [] : (['other-way'] as const)),
  ];
}
