import type { Circuit, ReadingWindow, Tolerances } from '@truesweep/core';
import { divided, noLegs, type Parts } from './divider.js';

export interface TrueWindows {
  readonly closed: ReadingWindow;
  readonly open: ReadingWindow;
}

/** Between which voltages a sound sensor's readings lie, by the corpus's own divider. */
export function trueWindows(circuit: Circuit, tolerances: Tolerances): TrueWindows {
  const parts = partsOf(circuit);
  return {
    closed: windowOfParts(parts, tolerances, 'closed'),
    open: windowOfParts(parts, tolerances, 'open'),
  };
}

/** The extremes of the divider over all corners of the tolerances, and over the places between where it may turn back. */
export function windowOfParts(
  parts: Parts,
  tolerances: Tolerances,
  end: 'closed' | 'open',
): ReadingWindow {
  const reach = tolerances[`${end}Position`] ?? 0;
  // A pull-up makes the output turn back near the ground: then both the wiper's place and the track count in between.
  const grid = parts.pullUp < Number.POSITIVE_INFINITY ? between : corners;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const at of cornersOf(parts, tolerances))
    for (const track of grid)
      for (const place of grid) {
        const off = { ...at, track: parts.track * (1 + track * (tolerances.track ?? 0)) };
        const position = Math.min(1, Math.max(0, parts[end] + place * reach));
        const volts = divided(off, position, noLegs);
        low = Math.min(low, volts);
        high = Math.max(high, volts);
      }
  return { low, nominal: divided(parts, parts[end], noLegs), high };
}

const corners = [-1, 1];
const between = Array.from({ length: 17 }, (_, i) => i / 8 - 1);

/** The parts but for the track, each at an end of its tolerance. */
function cornersOf(parts: Parts, tolerances: Tolerances): readonly Parts[] {
  const { source = 0, limiter = 0, pullDown = 0, pullUp = 0, pullUpVolts = 0 } = tolerances;
  const offs = { volts: source, limiter, pullDown, pullUp, pullUpVolts };
  let all: readonly Parts[] = [parts];
  for (const [name, off] of Object.entries(offs) as [keyof typeof offs, number][]) {
    const value = parts[name];
    if (value === undefined || off === 0 || !Number.isFinite(value)) continue;
    all = all.flatMap((at) => corners.map((way) => ({ ...at, [name]: value * (1 + way * off) })));
  }
  return all;
}

/** A circuit of source, limiter, track and load; the corpus knows no other. */
function partsOf({ source, limiter, sensor, load }: Circuit): Parts {
  const { pullDown = Number.POSITIVE_INFINITY, pullUp } = load;
  const { closedPosition = 0, openPosition = 1 } = sensor;
  return {
    volts: source.volts,
    limiter,
    track: sensor.track,
    closed: closedPosition,
    open: openPosition,
    pullDown,
    pullUp: pullUp?.ohms ?? Number.POSITIVE_INFINITY,
    ...(pullUp && 'volts' in pullUp && { pullUpVolts: pullUp.volts }),
  };
}
