import type { Expectation } from '../expectation/expectation.js';
import type { Travel, Volts } from '../units.js';

/** The ruler between volts and throttle travel, for rising and falling sensors alike. */
export interface ThrottleScale {
  /** Expected closed reading, V. */
  readonly closed: Volts;
  /** Expected open less expected closed reading, V; negative for a falling sensor. */
  readonly span: Volts;
  /** Where a lifted wiper's signal goes, on this ruler; undefined where nothing pulls it. */
  readonly rest: number | undefined;
}

export function throttleScale({ windows, restLevel }: Expectation): ThrottleScale {
  const closed = windows.closed.nominal;
  const span = windows.open.nominal - closed;
  return { closed, span, rest: restLevel === undefined ? undefined : (restLevel - closed) / span };
}

/** Fraction of the span above the closed reading: 0 at the expected closed, 1 at the expected open reading. */
export function onScale({ closed, span }: ThrottleScale, volts: Volts): number {
  return (volts - closed) / span + 0;
}

/** Travel at which a sound sensor shows a voltage, from the expected curve; held at the stops beyond it. */
export function travelAt({ curve }: Expectation, volts: Volts): Travel {
  const { travel, volts: table } = curve;
  const rising = table[table.length - 1]! > table[0]! ? 1 : -1;
  let low = 0;
  let high = table.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (rising * table[middle]! <= rising * volts) low = middle;
    else high = middle;
  }
  const part = (volts - table[low]!) / (table[high]! - table[low]!);
  return Math.min(1, Math.max(0, travel[low]! + (travel[high]! - travel[low]!) * part));
}

/**
 * Travel at a level of a recording whose throttle came to rest at known levels: the expected curve's shape, laid
 * between the stops as they were reached, so that parts off their nominal values shift no travel.
 */
export function travelAtLevel(
  expected: Expectation,
  { closed, span }: ThrottleScale,
  stops: { readonly closed: number; readonly open: number },
  level: number,
): Travel {
  const between = (level - stops.closed) / (stops.open - stops.closed);
  return travelAt(expected, closed + between * span);
}
