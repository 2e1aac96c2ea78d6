import type { Circuit, Position, Volts } from '@truesweep/core';
import type { WorkingUnit } from '../quantity.js';
import { writeQuantity } from '../writeQuantity.js';
import type { Draws } from './draws.js';

/** A hook-up without a load and where its wiper stands. */
export interface DrawnBench {
  readonly circuit: Circuit;
  readonly position: Position;
}

/** What a bench is fed from, V; a control unit feeds with the first. */
export const sourceVolts: readonly Volts[] = [5, 5, 6, 8, 9, 10, 12];

/**
 * A hook-up as a teacher takes it: whole volts, preferred resistances, the wiper at a multiple of 5 %. Without a limiter it is the control
 * unit that feeds the sensor: on a bench none is left out.
 */
export function drawnBench(draw: Draws, withLimiter: boolean): DrawnBench {
  return {
    circuit: {
      source: { volts: withLimiter ? draw.one(sourceVolts) : sourceVolts[0]! },
      limiter: withLimiter ? draw.ohms('E12', 470, 2700) : 0,
      sensor: { track: draw.ohms('E12', 2200, 10_000) },
      load: {},
    },
    position: draw.stepped(0.2, 0.9, 0.05),
  };
}

/** Resistances on both sides of the wiper, Ω. */
export function sidesOf({ limiter, sensor }: Circuit, position: Position) {
  return { up: limiter + (1 - position) * sensor.track, down: position * sensor.track };
}

/** A given value, as it stands in a question. */
export const given = (value: number, unit: WorkingUnit): string =>
  writeQuantity({ value: Number(value.toPrecision(12)), unit }, 12, true);

/** What a hook-up is made of, as it stands in a question. */
export function givenBench({ circuit, position }: DrawnBench) {
  return {
    source: given(circuit.source.volts, 'V'),
    ...(circuit.limiter > 0 && { limiter: given(circuit.limiter, 'Ω') }),
    track: given(circuit.sensor.track, 'Ω'),
    position: given(position, '%'),
  };
}
