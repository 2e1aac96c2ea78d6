import { meanAndDeviation } from '../statistics/meanAndDeviation.js';
import type { Volts } from '../units.js';
import type { ClosedReadings, Returns } from './score.js';

/** Sums up the closed readings, V, of the returns by hand and by the spring; their difference is hysteresis. */
export function closedReadings(
  byHand: readonly Volts[],
  bySpring: readonly Volts[],
): ClosedReadings {
  const [hand, spring] = [returnsOf(byHand), returnsOf(bySpring)];
  return {
    ...(hand && { byHand: hand }),
    ...(spring && { bySpring: spring }),
    ...(hand && spring && { hysteresis: hand.mean - spring.mean }),
  };
}

function returnsOf(readings: readonly Volts[]): Returns | undefined {
  const count = readings.length;
  if (count === 0) return undefined;
  const { mean, deviation } = meanAndDeviation(readings);
  const range = Math.max(...readings) - Math.min(...readings);
  return { count, mean, range, ...(count > 1 && { deviation }) };
}
