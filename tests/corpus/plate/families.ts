import type { Cause, Volts } from '@truesweep/core';
import { type Connection, isDetermined, operatingPoint } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';
import { type Bench, positionOf, restLevel, soundAt, windowOf } from './bench.js';
import {
  type Addition,
  crack,
  deadSpot,
  dirt,
  interference,
  looseLead,
  openCrack,
  roughPatch,
  slippedRotor,
  wornSpot,
} from './faults.js';

/** What can be wrong: added on the grid, in the hook-up, at the stop or in the recorder. */
export interface Family {
  readonly name: string;
  readonly causes: readonly Cause[];
  readonly add?: Addition;
}

const track = ['track'] as const;
const connection = ['connection'] as const;

export const families: readonly Family[] = [
  { name: 'worn spot', causes: track, add: wornSpot },
  { name: 'dead spot', causes: track, add: deadSpot },
  { name: 'rough patch', causes: track, add: roughPatch },
  { name: 'loose wiper lead', causes: connection, add: looseLead('contact') },
  { name: 'interference', causes: ['interference'], add: interference },
  { name: 'dirt', causes: track, add: dirt },
  { name: 'ends wrong', causes: ['ends'] },
  { name: 'crack', causes: ['track', 'ends', 'closed-rest'], add: crack },
  { name: 'loose supply lead', causes: connection, add: looseLead('above') },
  { name: 'worn spot', causes: track, add: wornSpot },
  { name: 'closed rest scatters', causes: ['closed-rest', 'ends'] },
  { name: 'slipped rotor', causes: ['track', 'ends', 'closed-rest'], add: slippedRotor },
  { name: 'dead spot', causes: track, add: deadSpot },
  { name: 'loose ground lead', causes: connection, add: looseLead('below') },
  { name: 'no output', causes: ['wiring', 'connection'] },
  { name: 'worn spot', causes: track, add: wornSpot },
  { name: 'exchanged', causes: ['wiring'] },
  { name: 'rough patch', causes: track, add: roughPatch },
  { name: 'miswired', causes: ['wiring'] },
  { name: 'clipped', causes: ['recording', 'none'] },
  { name: 'interference', causes: ['interference'], add: interference },
  { name: 'open crack', causes: ['track', 'connection', 'wiring'], add: openCrack },
];

/** Outside the window by a share of the span, negative within. */
export function excessOf(bench: Bench, end: 'closed' | 'open', volts: Volts): number {
  const { low, high } = windowOf(bench.nominal, end);
  return Math.max(low - volts, volts - high) / bench.span;
}

/** An end moved until its reading lies outside its window by a share of the span. */
export function withWrongEnd(bench: Bench, random: RandomStream): Bench {
  const end = random.pick(['closed', 'open'] as const);
  const wanted = random.logBetween(0.008, 0.25);
  const inward = Math.sign(bench.actual.open - bench.actual.closed) * (end === 'closed' ? 1 : -1);
  for (const way of random.chance(0.5) ? [-inward, inward] : [inward]) {
    for (let off = 0; off < 0.5; off += 0.002) {
      const place = bench.actual[end] + way * off;
      const moved = { ...bench, actual: { ...bench.actual, [end]: place } };
      if (place < 0.005 || place > 0.995) break;
      if (excessOf(bench, end, soundAt(moved, end === 'closed' ? 0 : 1)) >= wanted) return moved;
    }
  }
  return bench;
}

const wrong: readonly Connection[] = [
  { supply: 'wiper', ground: 'bottom', signal: 'top' },
  { supply: 'top', ground: 'wiper', signal: 'bottom' },
  { supply: 'bottom', ground: 'wiper', signal: 'top' },
  { supply: 'wiper', ground: 'top', signal: 'bottom' },
];

/** The output of a sensor that is not connected as planned. */
export function misconnected(
  name: string,
  bench: Bench,
  wiper: Float64Array,
  random: RandomStream,
): Float64Array {
  if (name === 'no output') {
    const level = random.pick([restLevel(bench.actual), 0, bench.actual.volts]);
    return wiper.map(() => level);
  }
  const connection: Connection =
    name === 'exchanged'
      ? { supply: 'bottom', ground: 'top', signal: 'wiper' }
      : random.pick(wrong);
  const { actual, expected } = bench;
  const circuit = {
    ...expected.circuit,
    source: { volts: actual.volts },
    sensor: { track: actual.track },
    connection,
  };
  const table = Float64Array.from({ length: 201 }, (_, i) => {
    const { output } = operatingPoint(circuit, i / 200);
    return isDetermined(output) ? output : 0;
  });
  return wiper.map((x) => {
    const at = Math.min(199.999, positionOf(bench, x) * 200);
    const below = Math.floor(at);
    return table[below]! + (at - below) * (table[below + 1]! - table[below]!);
  });
}
