import {
  type ControlUnit,
  type DigitalMeter,
  formatQuantity,
  type Instrument,
  type Logger,
  type ModelledDropout,
  type Oscilloscope,
  sightOf,
} from '@truesweep/core';
import { workingRules as rules, chanceWorkingWords as words } from '@truesweep/wording/working';
import {
  call,
  difference,
  type Expression,
  negative,
  type Operand,
  power,
  product,
  quotient,
  sum,
} from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';

/**
 * The chance that an instrument shows a dropout, whose phase against its readings is as likely as any other.
 *
 * @param instrument A digital meter, an oscilloscope, a logger or a control unit.
 * @param dropout The dropout.
 * @param passes Over how many passes, each with a phase of its own.
 * @returns The answer is the chance that at least one of the passes shows it.
 * @throws InputError as `sightOf` does; `no-working` for a needle, which follows a differential equation, and for a meter that keeps extremes.
 *
 * @example
 * const logger = { kind: 'logger', name: 'Logger', inputOhms: 1e6, range: { low: 0, high: 5 }, bits: 12, interval: 0.01 } as const;
 * explainDropoutChance(logger, { seconds: 0.002, from: 2.5, to: 0 }, 1).answer.value // => ≈ 0.2
 */
export function explainDropoutChance(
  instrument: Instrument,
  dropout: ModelledDropout,
  passes: number,
): Working {
  sightOf(instrument, dropout, passes);
  if (instrument.kind === 'needle-meter') refuseWorking('instrument', words.needle);
  if (instrument.kind === 'digital-meter' && instrument.keepsExtremes)
    refuseWorking('instrument', words.extremes);
  const title = words.title(instrument.name, formatQuantity(dropout.seconds, 's', { trim: true }));
  return workOut(title, (sheet) => {
    const on: Notes = {
      sheet,
      // A dropout and its surroundings are mostly worked out of a hook-up.
      give: (symbol, value, unit) =>
        sheet.give({ symbol, meaning: words.given[symbol], value, unit }, 'found'),
      find: (symbol, meaning, unit, formula, rule = 'difference') => {
        sheet.find({ symbol, meaning, unit, formula, rule: rules[rule] });
      },
    };
    on.give('L', dropout.seconds, 's');
    on.give('U', dropout.from, 'V');
    on.give('U_d', dropout.to, 'V');
    on.find('d', words.depth, 'V', call('abs', difference('U_d', 'U')));
    const conclusion =
      instrument.kind === 'digital-meter'
        ? findMeter(on, instrument, dropout)
        : findInstants(on, instrument, dropout);
    on.give('n', passes, '1');
    on.find('P', words.passes, '%', difference(1, power(difference(1, 'p'), 'n')), 'independent');
    return conclusion === undefined ? {} : { conclusion };
  });
}

/** The sheet, with this working's ways to write on it. */
interface Notes {
  readonly sheet: Sheet;
  readonly give: (symbol: keyof typeof words.given, value: number, unit: WorkingUnit) => string;
  readonly find: (
    symbol: string,
    meaning: string,
    unit: WorkingUnit,
    formula: Expression,
    rule?: keyof typeof rules,
  ) => void;
}

/** A mean over an aperture; says why it can't show the dropout, where it can't. */
function findMeter(
  { sheet, give, find }: Notes,
  meter: DigitalMeter,
  dropout: ModelledDropout,
): string | undefined {
  const { aperture, deadTime = 0, counts, ranges, heldRange, displayInterval } = meter;
  give('T_a', aperture, 's');
  if (displayInterval !== undefined) give('T', displayInterval, 's');
  else {
    give('T_d', deadTime, 's');
    find('T', words.interval, 's', sum('T_a', 'T_d'));
  }
  give('N', counts, '1');
  const size = Math.abs(dropout.from);
  const most = Math.min(1, meter.rangeChange?.up ?? 1);
  const range = heldRange ?? ranges.find((one) => size <= one * most);
  if (range === undefined || size > range)
    refuseWorking('dropout.from', `is ${dropout.from} V, beyond every range of the meter`);
  give('U_r', range, 'V');
  give('n_q', 3, '1');
  const stepsOut = quotient(product('n_q', 'U_r'), 'N');
  if (dropout.slope) {
    give('S', Math.abs(dropout.slope), 'V/s');
    find('d_v', words.noticed, 'V', call('max', stepsOut, product('S', 'T')), 'threeSteps');
  } else find('d_v', words.noticed, 'V', stepsOut, 'threeSteps');
  const on: Notes = { sheet, give, find };
  if (isTooShallow(on)) return giveNone(on, words.tooShallow);
  find('θ', words.share, '%', quotient('d_v', 'd'), 'ratio');
  findArea(on, dropout);
  find('T_θ', words.filled, 's', product('θ', 'T_a'), 'overlap');
  const isLong = sheet.compare({
    finds: words.isLong,
    left: 'A',
    relation: '≥',
    right: 'T_θ',
    so: (holds) => (holds ? words.longEnough : words.tooShort),
    rule: rules.overlap,
  });
  if (!isLong) return giveNone(on, words.tooShort);
  findChance(on, quotient(difference(sum('T_a', 'A'), product(2, 'T_θ')), 'T'));
  return undefined;
}

/** Holds the depth against what stands out. */
function isTooShallow({ sheet }: Notes): boolean {
  return !sheet.compare({
    finds: words.isDeep,
    left: 'd',
    relation: '≥',
    right: 'd_v',
    so: (holds) => (holds ? words.deepEnough : words.tooShallow),
    rule: rules.threeSteps,
  });
}

/** No phase shows it; hands on why. */
function giveNone({ give }: Notes, why: string): string {
  give('p', 0, '%');
  return why;
}

/** The length of a rectangle with the area of a dropout that capacitance rounds. */
function findArea(on: Notes, { fall = 0, recovery = 0 }: ModelledDropout): void {
  const { give, find } = on;
  if (fall === 0 && recovery === 0) {
    find('A', words.area, 's', sum('L'));
    return;
  }
  give('τ_1', fall, 's');
  give('τ_2', recovery, 's');
  const reached = fall > 0 ? findReached(on, 'τ_1') : 1;
  const more = product(difference('τ_2', 'τ_1'), reached);
  find('A', words.area, 's', sum('L', more), 'exponential');
}

function findReached({ find }: Notes, pole: string): string {
  find(
    'g',
    words.reached,
    '%',
    difference(1, call('exp', negative(quotient('L', pole)))),
    'exponential',
  );
  return 'g';
}

/** Readings that take no time; says why they can't show the dropout, where they can't. */
function findInstants(
  on: Notes,
  instrument: Oscilloscope | Logger | ControlUnit,
  dropout: ModelledDropout,
): string | undefined {
  const { sheet, find } = on;
  const inARow = instrument.kind === 'control-unit' ? findLimit(on, instrument, dropout) : 1;
  if (instrument.kind !== 'control-unit') findSampler(on, instrument);
  if (!sheet.has('d_v')) return giveNone(on, words.withinLimits);
  if (isTooShallow(on)) return giveNone(on, words.tooShallow);
  find('θ', words.share, '%', quotient('d_v', 'd'), 'ratio');
  if (!findBeyond(on, instrument, dropout)) return giveNone(on, words.rounded);
  if (inARow === 1) {
    findChance(on, quotient('L_b', 'T'));
    return undefined;
  }
  find('T_m', words.wanted, 's', product(difference('m', 1), 'T'), 'inARow');
  const isLong = sheet.compare({
    finds: words.isLongInARow,
    left: 'L_b',
    relation: '>',
    right: 'T_m',
    so: (holds) => (holds ? words.longEnough : words.tooShortInARow),
    rule: rules.inARow,
  });
  if (!isLong) return giveNone(on, words.tooShortInARow);
  findChance(on, quotient(difference('L_b', 'T_m'), 'T'));
  return undefined;
}

function findSampler({ give, find }: Notes, instrument: Oscilloscope | Logger): void {
  const { range, bits } = instrument;
  give('U_lo', range.low, 'V');
  give('U_hi', range.high, 'V');
  give('b', bits, '1');
  give('n_q', 3, '1');
  find('q', words.step, 'V', quotient(difference('U_hi', 'U_lo'), power(2, 'b')), 'quantising');
  find('d_v', words.noticedBySteps, 'V', product('n_q', 'q'), 'threeSteps');
  const interval =
    instrument.kind === 'logger'
      ? instrument.interval
      : instrument.keepsPeaks
        ? instrument.fastest
        : Math.max(instrument.record / instrument.memory, instrument.fastest);
  give('T', interval, 's');
}

/** A control unit's limit beyond which a reading is a fault; says how many in a row are needed. */
function findLimit(
  { give, find, sheet }: Notes,
  { interval, debounce, limits }: ControlUnit,
  { to }: ModelledDropout,
): number {
  give('T', interval, 's');
  const limit = to < limits.low ? limits.low : to > limits.high ? limits.high : undefined;
  if (limit !== undefined) {
    give('U_l', limit, 'V');
    find('d_v', words.noticedByLimit, 'V', call('abs', difference('U', 'U_l')));
  }
  give('t_d', debounce, 's');
  find('m', words.inARow, '1', sum(call('ceil', quotient('t_d', 'T')), 1), 'inARow');
  return sheet.value('m');
}

/** How long a rounded dropout departs by at least the share; says whether it ever does. */
function findBeyond(
  on: Notes,
  instrument: Oscilloscope | Logger | ControlUnit,
  { fall = 0, recovery = 0, seconds }: ModelledDropout,
): boolean {
  const { sheet, give, find } = on;
  const pole = givePole(on, instrument);
  const constant = (
    symbol: 'τ_1' | 'τ_2',
    value: number,
    name: string,
    meaning: string,
  ): string | undefined => {
    if (value > 0) give(symbol, value, 's');
    const both: readonly Operand[] = [...(value > 0 ? [symbol] : []), ...(pole ? [pole] : [])];
    if (both.length < 2) return both[0] as string | undefined;
    find(name, meaning, 's', sum(...both), 'poles');
    return name;
  };
  const leaving = constant('τ_1', fall, 'τ_l', words.leaving);
  const returning = constant('τ_2', recovery, 'τ_r', words.returning);
  if (seconds === 0) return false;
  if (leaving === undefined && returning === undefined) {
    find('L_b', words.beyond, 's', sum('L'));
    return true;
  }
  const reached = leaving === undefined ? 1 : findReached(on, leaving);
  if (typeof reached === 'string' && sheet.value(reached) < sheet.value('θ')) return false;
  const reaching = leaving === undefined ? [] : [product(leaving, call('ln', difference(1, 'θ')))];
  const lasting =
    returning === undefined ? [] : [product(returning, call('ln', quotient(reached, 'θ')))];
  find('L_b', words.beyond, 's', sum('L', ...reaching, ...lasting), 'exponential');
  return true;
}

function givePole(
  { give, find }: Notes,
  instrument: Oscilloscope | Logger | ControlUnit,
): string | undefined {
  if (instrument.kind === 'oscilloscope') {
    if (instrument.bandwidth === undefined) return undefined;
    give('f', instrument.bandwidth, 'Hz');
    find('τ', words.pole, 's', quotient(1, product(2, Math.PI, 'f')), 'bandwidth');
    return 'τ';
  }
  return instrument.filter ? give('τ', instrument.filter, 's') : undefined;
}

function findChance({ find }: Notes, chance: Expression): void {
  find('p', words.chance, '%', call('min', 1, chance), 'overlap');
}
