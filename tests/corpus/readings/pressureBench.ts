import type { RandomNumbers } from '../../../packages/core/src/statistics/randomNumbers.js';

/** One reading of a modelled pressure sensor. */
export interface PumpReading {
  /** What the pump's gauge shows, Pa below the air around; 0 for the open port. */
  readonly vacuum: number;
  /** What an absolute gauge at the port shows, Pa, where the readings were taken so. */
  readonly absolute: number;
  readonly volts: number;
  readonly supply: number;
}

/** A modelled pressure sensor on a modelled bench, with the truth. */
export interface PressureCase {
  readonly kind: 'sound' | 'offset' | 'gain' | 'stuck' | 'other-part' | 'no-supply';
  readonly reference: 'absolute' | 'gauge';
  /** Whether the pumped readings were taken from a pump's gauge, or as absolute pressures. */
  readonly readAs: 'gauge' | 'absolute';
  readonly gain: number;
  readonly offset: number;
  /** What a sound one may be off, Pa. */
  readonly error: number;
  readonly altitude: number;
  readonly barometer?: { readonly pressure: number; readonly uncertainty: number };
  /** Standard uncertainties as the person knows them: of the pump's gauge, Pa, and of the voltmeter, V. */
  readonly gauge: number;
  readonly voltmeter: number;
  readonly readings: readonly PumpReading[];
  readonly isVisible: boolean;
  readonly isAdequate: boolean;
}

const kinds = ['offset', 'gain', 'stuck', 'other-part'] as const;

/** One case: a sensor, sound or not, read with the port open and under a hand pump. */
export function pressureCase(random: RandomNumbers): PressureCase {
  const { uniform, normal } = random;
  const either = (half: number) => half * (2 * uniform() - 1);
  const chance = (of: number) => uniform() < of;
  const choose = <Item>(items: readonly Item[]) => items[Math.floor(uniform() * items.length)]!;
  const [reference, gain, offset] = choose([
    ['absolute', 9e-6, -0.095],
    ['absolute', 4e-6, -0.04],
    ['absolute', 7.9e-6, 0],
    ['gauge', 7.652e-6, 0.92],
  ] as const);
  const readAs = chance(0.3) ? 'absolute' : 'gauge';
  const error = choose([1500, 2500, 3500]);
  const kind = chance(0.5) ? 'sound' : choose(kinds);
  const altitude = choose([0, 120, 400, 900, 1500]);
  const standard = 101_325 * (1 - altitude / 44_330.8) ** 5.2559;
  const air = standard + 1500 * Math.max(-2, Math.min(2, normal()));
  const barometer = chance(0.7) ? { pressure: air + 100 * normal(), uncertainty: 100 } : undefined;
  // A sound one is off by a line that stays within the error at both ends.
  let [low, high] = [either(error), either(error)];
  if (kind === 'offset') {
    const more = (chance(0.5) ? 1 : -1) * (2 + 4 * uniform()) * error;
    low += more;
    high += more;
  }
  const factor = kind === 'gain' ? 1 + (chance(0.5) ? 1 : -1) * (0.12 + 0.3 * uniform()) : 1;
  const part = kind === 'other-part' ? choose([0.45, 2.2]) : 1;
  const stuckAt = 0.1 + 0.8 * uniform();
  const ratioAt = (p: number): number => {
    if (kind === 'stuck') return stuckAt;
    const off = low + ((high - low) * Math.abs(p)) / 101_325;
    return Math.min(0.99, Math.max(0.005, part * factor * gain * (p + off) + offset));
  };
  const gauge = choose([200, 400, 800]);
  const shift = gauge * normal();
  const voltmeter = choose([0.002, 0.004]);
  const supply = 5 + 0.1 * normal();
  const steps = chance(0.9) ? [0, 0.35, 0.7] : [0];
  let isVisible = false;
  const barometerKnows = barometer ? 100 : 1500;
  const readings = steps.map((depth): PumpReading => {
    const vacuum = Math.round(depth * 75_000);
    const p = air - vacuum + (vacuum > 0 ? shift : 0);
    const isGauge = reference === 'gauge';
    const ratio = ratioAt(isGauge ? p - air : p);
    const nominal = gain * (isGauge ? 0 - vacuum : air - vacuum) + offset;
    const u = Math.hypot(
      gain * barometerKnows,
      vacuum > 0 ? gain * gauge : 0,
      (1.4 * voltmeter) / 5,
    );
    isVisible ||= kind !== 'sound' && Math.abs(ratio - nominal) > gain * error + 3 * u;
    return {
      vacuum,
      absolute: air - vacuum,
      volts: ratio * supply + voltmeter * normal(),
      supply: supply + voltmeter * normal(),
    };
  });
  const u = Math.hypot(barometerKnows, gauge, (1.4 * voltmeter) / 5 / gain);
  const isAdequate = steps.length > 1 && 2 * error >= 10 * u;
  return {
    ...{
      kind,
      reference,
      readAs,
      gain,
      offset,
      error,
      altitude,
      gauge,
      voltmeter,
      readings,
      isVisible,
      isAdequate,
    },
    ...(barometer && { barometer }),
  };
}
