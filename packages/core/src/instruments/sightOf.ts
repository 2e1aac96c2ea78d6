import { checkFields, type FieldRules } from '../fields.js';
import { between, finiteBetween, refuse, wholeNumber } from '../guard.js';
import type { Fraction, Seconds, Volts } from '../units.js';
import { chanceInPasses, chanceOfReading, type Readings } from './chanceOfReading.js';
import { checkInstrument } from './checkInstrument.js';
import { deepest, type ModelledDropout, timeBeyond } from './dropout.js';
import type {
  Assumption,
  ControlUnit,
  DigitalMeter,
  Instrument,
  Logger,
  NeedleMeter,
  Oscilloscope,
} from './instrument.js';
import { needlePulse } from './needlePulse.js';
import { rangeFor } from './rangeFor.js';
import { intervalOf, poleOf, stepOf } from './sampling.js';
import { noticedSteps, usualMovement, usualNoticed } from './usualValues.js';

/** How an instrument sees a dropout. */
export interface Sight {
  /** Largest departure that it shows, V, 0 or more; of a control unit what reaches its converter. */
  readonly peak: Volts;
  /** Smallest departure that stands out on it, V, 0 or more; of a control unit what makes a reading a fault. ∞ where none can. */
  readonly noticed: Volts;
  /** Chance that one pass shows the dropout, 0 to 1. */
  readonly chance: Fraction;
  /** Chance that at least one of the passes shows it, 0 to 1. */
  readonly chanceInPasses: Fraction;
  /**
   * The shortest dropout of this depth, s, that shows with each probability (0 to 1), in one pass and in all of them; ∞ where none does.
   */
  readonly shortest: readonly {
    readonly probability: Fraction;
    readonly inOnePass: Seconds;
    readonly inPasses: Seconds;
  }[];
  /** What was taken for granted because the instrument's description doesn't say it, as codes. */
  readonly assumptions: readonly Assumption[];
}

const probabilities = [0.5, 0.95, 0.99] as const;
/** No dropout is longer, s. */
const longest: Seconds = 1e4;

/** What a kind of instrument makes of a dropout. */
interface Means {
  readonly noticed: Volts;
  readonly peak: (dropout: ModelledDropout) => Volts;
  readonly chance: (dropout: ModelledDropout) => Fraction;
  readonly assumptions: readonly Assumption[];
}

/**
 * How an instrument sees a dropout whose phase against its readings is as likely as any other: the chance is exact for regular readings with
 * aperture and dead time ({@link chanceOfReading}). A meter's mean takes a dropout that capacitance rounds as a rectangle of the same
 * area, and its digits stand out where they stray by more than the movement changes them from one to the next, its kept extremes where they
 * lie beyond every sound reading; the time constants of filters and bandwidth are added to those of the dropout. A needle shows a dropout always or never.
 *
 * @param passes Over how many passes, each with a phase of its own; 1 to 10⁶.
 * @throws InputError for what no instrument and no dropout can be.
 *
 * @example
 * const logger = { kind: 'logger', name: 'Logger', inputOhms: 1e6, range: { low: 0, high: 5 }, bits: 12, interval: 0.01 } as const;
 * const { chance, shortest } = sightOf(logger, { seconds: 0.002, from: 2.5, to: 0 }, 1);
 * chance // => 0.2
 * shortest[1].inOnePass.toFixed(6) // => '0.009500'
 */
export function sightOf(instrument: Instrument, dropout: ModelledDropout, passes: number): Sight {
  checkInstrument(instrument);
  checkDropout(dropout);
  wholeNumber(passes, 1, 1e6, 'passes');
  const means = meansOf(instrument, dropout);
  // The searches for the shortest try the same lengths again, and a needle's way takes long to follow.
  const known = new Map<Seconds, Fraction>();
  const chanceOf = (seconds: Seconds): Fraction => {
    const chance = known.get(seconds) ?? means.chance({ ...dropout, seconds });
    known.set(seconds, chance);
    return chance;
  };
  const chance = chanceOf(dropout.seconds);
  const shortestFor = (probability: Fraction, count: number): Seconds =>
    shortestSeconds((seconds) => chanceInPasses(chanceOf(seconds), count), probability);
  return {
    peak: means.peak(dropout),
    noticed: means.noticed,
    chance,
    chanceInPasses: chanceInPasses(chance, passes),
    shortest: probabilities.map((probability) => ({
      probability,
      inOnePass: shortestFor(probability, 1),
      inPasses: shortestFor(probability, passes),
    })),
    assumptions: [
      ...means.assumptions,
      ...(instrument.inputFarads === undefined ? (['input-capacitance-0'] as const) : []),
    ],
  };
}

const volts = between(-1e9, 1e9, 'V');
const duration = between(0, longest, 's');

const dropoutRules: FieldRules = {
  seconds: duration,
  from: volts,
  to: volts,
  'fall?': duration,
  'recovery?': duration,
  'slope?': between(0, 1e12, 'V/s'),
  'sound?': { low: volts, high: volts },
};

function checkDropout(dropout: ModelledDropout): void {
  checkFields(dropout, 'dropout', dropoutRules);
  const { from, to, sound } = dropout;
  if (!(Math.abs(to - from) > 0))
    refuse(to, 'dropout.to', `away from dropout.from, ${from} V`, 'zero');
  if (!sound) return;
  finiteBetween(sound.low, -1e9, from, 'dropout.sound.low', 'V');
  finiteBetween(sound.high, from, 1e9, 'dropout.sound.high', 'V');
}

/** The least seconds whose chance reaches a probability; the chance never falls with the length. */
function shortestSeconds(chance: (seconds: Seconds) => Fraction, wanted: Fraction): Seconds {
  if (chance(longest) < wanted) return Number.POSITIVE_INFINITY;
  let [low, high] = [0, longest];
  while (high - low > 1e-12 * high) {
    const middle = low > 0 ? Math.sqrt(low * high) : high / 1024;
    if (middle <= low || middle >= high || high < 1e-12) break;
    if (chance(middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

function meansOf(instrument: Instrument, dropout: ModelledDropout): Means {
  switch (instrument.kind) {
    case 'digital-meter':
      return digital(instrument, dropout);
    case 'needle-meter':
      return needle(instrument, dropout);
    case 'oscilloscope':
    case 'logger':
      return sampler(instrument, dropout);
    case 'control-unit':
      return controlUnit(instrument, dropout);
  }
}

const depthOf = ({ from, to }: ModelledDropout): Volts => Math.abs(to - from);

function digital(meter: DigitalMeter, dropout: ModelledDropout): Means {
  const { aperture, deadTime, displayInterval, keepsExtremes = false } = meter;
  const conversion = aperture + (deadTime ?? 0);
  const interval = keepsExtremes ? conversion : (displayInterval ?? conversion);
  const noticed = keepsExtremes
    ? beyondSound(meter, dropout)
    : besideMovement(meter, dropout, interval);
  const share = noticed / depthOf(dropout);
  return {
    noticed,
    peak: (one) => (depthOf(one) * Math.min(sameArea(one), aperture)) / aperture,
    chance: (one) =>
      share > 1 ? 0 : chanceOfReading(sameArea(one), { interval, aperture, share }),
    assumptions: [
      'three-steps-noticed',
      ...(dropout.slope === undefined ? (['signal-at-rest'] as const) : []),
      ...(deadTime === undefined ? (['dead-time-0'] as const) : []),
      ...(displayInterval === undefined ? (['every-conversion-shown'] as const) : []),
    ],
  };
}

/** Digits stand out only where they stray by more than the movement changes them from one to the next. */
function besideMovement(
  meter: DigitalMeter,
  { from, slope = 0 }: ModelledDropout,
  interval: Seconds,
): Volts {
  return Math.max(standingOut(meter, from), Math.abs(slope) * interval);
}

/** Extremes tell only what lies beyond the lowest or the highest sound reading. */
function beyondSound(meter: DigitalMeter, { from, to, sound }: ModelledDropout): Volts {
  const { low, high } = sound ?? { low: from, high: from };
  return (to < from ? from - low : high - from) + standingOut(meter, from);
}

function standingOut(meter: DigitalMeter, volts: Volts): Volts {
  const range = rangeFor(meter, volts) ?? Number.POSITIVE_INFINITY;
  return (noticedSteps * range) / meter.counts;
}

/** The length of the rectangle with the area of a dropout and its depth, s. */
function sameArea(dropout: ModelledDropout): Seconds {
  const { seconds, fall = 0, recovery = 0 } = dropout;
  return Math.max(0, seconds + (recovery - fall) * deepest(dropout));
}

function needle(meter: NeedleMeter, dropout: ModelledDropout): Means {
  const { movement = usualMovement, noticed: part = usualNoticed, range } = meter;
  const noticed = part * range;
  const peak = (one: ModelledDropout): Volts =>
    Math.min(depthOf(dropout) * needlePulse(movement, one), range);
  return {
    noticed,
    peak,
    chance: (one) => (peak(one) >= noticed ? 1 : 0),
    assumptions: [
      ...(meter.movement === undefined ? (['movement-usual'] as const) : []),
      ...(meter.noticed === undefined ? (['eye-notices-2-percent'] as const) : []),
    ],
  };
}

function sampler(instrument: Oscilloscope | Logger, dropout: ModelledDropout): Means {
  const keepsPeaks = instrument.kind === 'oscilloscope' && instrument.keepsPeaks;
  const interval = keepsPeaks ? instrument.fastest : intervalOf(instrument);
  const noticed = noticedSteps * stepOf(instrument);
  return {
    ...instants(dropout, poleOf(instrument), noticed, { interval }),
    assumptions: ['three-steps-noticed', ...poleAssumed(instrument)],
  };
}

function poleAssumed(instrument: Oscilloscope | Logger): readonly Assumption[] {
  if (instrument.kind === 'logger') return instrument.filter === undefined ? ['no-filter'] : [];
  return instrument.bandwidth === undefined ? ['bandwidth-unlimited'] : [];
}

function controlUnit(unit: ControlUnit, dropout: ModelledDropout): Means {
  const { interval, debounce, filter, limits } = unit;
  const { from, to } = dropout;
  const limit = to < limits.low ? limits.low : to > limits.high ? limits.high : undefined;
  const noticed = limit === undefined ? Number.POSITIVE_INFINITY : Math.abs(from - limit);
  const inARow = Math.ceil(debounce / interval) + 1;
  return {
    ...instants(dropout, filter ?? 0, noticed, { interval, inARow }),
    assumptions: filter === undefined ? ['no-filter'] : [],
  };
}

/** What instants see of a dropout that a further pole rounds. */
function instants(
  dropout: ModelledDropout,
  pole: Seconds,
  noticed: Volts,
  readings: Pick<Readings, 'interval' | 'inARow'>,
): Omit<Means, 'assumptions'> {
  const share = noticed / depthOf(dropout);
  const rounded = (one: ModelledDropout): ModelledDropout => ({
    ...one,
    fall: (one.fall ?? 0) + pole,
    recovery: (one.recovery ?? 0) + pole,
  });
  return {
    noticed,
    peak: (one) => depthOf(one) * deepest(rounded(one)),
    chance: (one) =>
      chanceOfReading(timeBeyond(rounded(one), share), { ...readings, aperture: 0, share: 0 }),
  };
}
