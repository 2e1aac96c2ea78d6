import type { RandomNumbers } from '../../../packages/core/src/statistics/randomNumbers.js';

/** What a person reads of one thermistor in one bath, and what they know of it. */
export interface BathReading {
  /** `ice`, `boiling` or a bath with a thermometer. */
  readonly bath: 'ice' | 'boiling' | 'thermometer';
  /** What the thermometer shows, °C. */
  readonly shown: number;
  /** Its standard uncertainty as its maker says, K. */
  readonly thermometer: number;
  /** What the sensor may still have to settle, K, as the person reckons. */
  readonly unsettled: number;
  readonly ohms?: number;
  readonly volts?: number;
  /** Standard uncertainty of the meter, in Ω or V. */
  readonly meter: number;
}

/** A modelled thermistor on a modelled bench, with the truth. */
export interface ThermistorCase {
  readonly kind: 'sound' | 'drifted' | 'other-part' | 'break' | 'short' | 'series' | 'leak';
  /** The nominal law, one B: Ω at 25 °C, K. */
  readonly nominal: { readonly ohms: number; readonly b: number };
  readonly tolerances: { readonly ohms: number; readonly b: number };
  /** Height of the bench, m, and what is known of the air there. */
  readonly altitude: number;
  readonly barometer?: { readonly pressure: number; readonly uncertainty: number };
  readonly pullUp?: {
    readonly ohms: number;
    readonly supply: number;
    readonly isProved: boolean;
    readonly meter: number;
  };
  readonly dissipation?: number;
  readonly readings: readonly BathReading[];
  /** Whether at a bath that was read the sensor lies outside its tolerances by more than three standard uncertainties of the reading. */
  readonly isVisible: boolean;
  /** Whether the tolerances at every bath are ten times the standard uncertainty apart, the baths 40 K apart, the pull-up known. */
  readonly isAdequate: boolean;
}

const zero = 273.15;
const kinds = ['drifted', 'other-part', 'break', 'short', 'series', 'leak'] as const;

/** Pressure at a height with the day's weather, Pa: an exponential fit of its own, with ±1.5 kPa standard deviation. */
const airAt = (altitude: number, weather: number) =>
  101_325 * (1 - altitude / 44_330.8) ** 5.2559 + weather;
/** Where water boils, °C: by Antoine's equation for water between 1 and 100 °C, mmHg (from memory), good to 0.1 K. */
const boilsAt = (pascals: number) => 1730.63 / (8.07131 - Math.log10(pascals / 133.322)) - 233.426;

/** One case: a sensor, sound or not, read by a person with what a workshop has. */
export function thermistorCase(random: RandomNumbers): ThermistorCase {
  const { uniform, normal } = random;
  const either = (half: number) => half * (2 * uniform() - 1);
  const chance = (of: number) => uniform() < of;
  const choose = <Item>(items: readonly Item[]) => items[Math.floor(uniform() * items.length)]!;
  const nominal = {
    ohms: choose([2044, 2500, 10_000, 15_000, 47_000]),
    b: 3000 + 1200 * uniform(),
  };
  const tolerances = { ohms: choose([0.02, 0.05, 0.1]), b: choose([0.005, 0.01, 0.02]) };
  const kind = chance(0.5) ? 'sound' : choose(kinds);
  const own = {
    ohms: nominal.ohms * (1 + either(tolerances.ohms)),
    b: nominal.b * (1 + either(tolerances.b)),
  };
  if (kind === 'drifted') own.ohms *= chance(0.5) ? 1.15 + uniform() : 0.85 - 0.5 * uniform();
  if (kind === 'other-part') own.b *= chance(0.5) ? 1.08 + 0.2 * uniform() : 0.92 - 0.2 * uniform();
  const series = kind === 'series' ? nominal.ohms * (0.05 + uniform()) : 0;
  const leak = kind === 'leak' ? nominal.ohms * (0.5 + 5 * uniform()) : Infinity;
  const ohmsAt = (t: number): number => {
    if (kind === 'break') return Infinity;
    if (kind === 'short') return 2 * uniform();
    const bare = own.ohms * Math.exp(own.b * (1 / (t + zero) - 1 / (25 + zero))) + series;
    return 1 / (1 / bare + 1 / leak);
  };
  const altitude = choose([0, 3, 120, 400, 900, 1500]);
  const air = airAt(altitude, 1500 * Math.max(-2, Math.min(2, normal())));
  const barometer = chance(0.6) ? { pressure: air + 100 * normal(), uncertainty: 100 } : undefined;
  const byVolts = chance(0.4);
  const dissipation = choose([0.004, 0.007, 0.024]);
  const isProved = chance(0.75);
  const book = choose([1000, 2200, 2740]);
  const isOther = !isProved && chance(0.3);
  const pullUp = byVolts
    ? { ohms: book, supply: 5, isProved, meter: chance(0.5) ? 1e7 : 1e6 }
    : undefined;
  const ownPullUp = (isOther ? choose([470, 1500, 4700]) : book) * (1 + 0.002 * normal());
  // Some are read unplugged first, and on the pull-up then.
  const isMixed = chance(0.3);
  const supply = 5 + 0.005 * normal();
  // A pull-up out of a book is good to 1 %.
  const ownBookUp = isProved || isOther ? ownPullUp : ownPullUp * (1 + 0.01 * normal());

  const thermometer = choose([0.05, 0.1, 0.3, 0.5]);
  const shift = thermometer * normal();
  const waited = choose([5, 7, 9]);
  const baths = chance(0.9) ? 2 + Math.floor(2 * uniform()) : 1;
  const order = [
    choose(['ice', 'thermometer'] as const),
    choose(['boiling', 'thermometer'] as const),
    'thermometer' as const,
  ];
  const readings: BathReading[] = [];
  let [isVisible, isAdequate] = [false, baths > 1];
  const truths: number[] = [];
  for (let i = 0; i < baths; i++) {
    const bath = order[i]!;
    const warm = [5 + 20 * uniform(), 70 + 25 * uniform(), 30 + 40 * uniform()][i]!;
    const truth = bath === 'ice' ? 0.1 * normal() : bath === 'boiling' ? boilsAt(air) : warm;
    truths.push(truth);
    // Of a step of some 60 K 0.7 or 0.1 % are left after five or seven time constants, which are known to a tenth.
    const left = Math.exp(-waited * (1 + 0.05 * normal()));
    const unsettled = 60 * Math.exp(-waited);
    const sensor = truth - 60 * left * (i === 0 ? -1 : 1) * 0.5;
    let [body, ohms] = [sensor, ohmsAt(sensor)];
    let volts: number | undefined;
    const onPullUp = pullUp && !(isMixed && i === 0) ? pullUp : undefined;
    if (onPullUp) {
      const across = (r: number) => {
        const seen = 1 / (1 / r + 1 / onPullUp.meter);
        return (supply * seen) / (seen + ownBookUp);
      };
      for (let step = 0; step < 30; step++) {
        body = sensor + (ohms > 0 && ohms < Infinity ? across(ohms) ** 2 / ohms / dissipation : 0);
        if (kind !== 'short') ohms = ohmsAt(body);
      }
      volts = Math.round((across(ohms) * (1 + 0.001 * normal()) + 0.0005 * normal()) * 1000) / 1000;
    }
    const noise = 1 + 0.002 * normal();
    const read = ohms === Infinity ? Infinity : Math.max(0, ohms * noise + 0.1 * normal());
    const reading = {
      ...{ bath, shown: Math.round((truth + shift) * 100) / 100, thermometer, unsettled },
      ...(volts === undefined
        ? { ohms: read, meter: read === Infinity ? 1 : 0.002 * read + 0.1 }
        : { volts, meter: 0.001 * volts + 0.0006 }),
    };
    readings.push(reading);
    // The truth's own reckoning: tolerances against three standard uncertainties, in parts of the resistance.
    const lnNominal = nominal.b * (1 / (truth + zero) - 1 / (25 + zero));
    const slope = nominal.b / (truth + zero) ** 2;
    const knows =
      bath === 'thermometer' ? thermometer : bath === 'ice' ? 0.1 : barometer ? 0.05 : 0.42;
    const half = tolerances.ohms + tolerances.b * Math.abs(lnNominal);
    let u = Math.hypot(slope * Math.hypot(knows, unsettled), 0.002);
    if (onPullUp) {
      const r = nominal.ohms * Math.exp(lnNominal);
      // d ln R/d ln V = (R + R_p)/R_p.
      const factor = (r + onPullUp.ohms) / onPullUp.ohms;
      const perVolt = reading.meter / (onPullUp.supply / (1 + onPullUp.ohms / r));
      u = Math.hypot(
        slope * Math.hypot(knows, unsettled),
        factor * Math.hypot(perVolt, 0.001),
        isProved ? 0.002 : 0.01,
      );
    }
    const isOutside =
      Math.abs(Math.log(ohms / (nominal.ohms * Math.exp(lnNominal)))) > half + 3 * u;
    isVisible ||= kind !== 'sound' && isOutside;
    isAdequate &&= 2 * half >= 10 * u;
  }
  isAdequate &&= Math.max(...truths) - Math.min(...truths) > 45 && (!pullUp || isProved);
  return {
    ...{ kind, nominal, tolerances, altitude, readings, isVisible, isAdequate },
    ...(barometer && { barometer }),
    ...(pullUp && { pullUp, dissipation }),
  };
}
