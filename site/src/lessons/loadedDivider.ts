import {
  type Circuit,
  type Curve,
  expectedCurve,
  loadingErrors,
  type Ohms,
  type OperatingPoint,
  operatingPoint,
  type Position,
  sourceResistance,
  type Volts,
} from '@truesweep/core';
import type { DividerFacts } from '@truesweep/wording';
import { ohmsBetween } from './ohmsBetween.js';
import { numberOf, textOf } from './textOf.js';

/** What one sets on the loaded divider. */
export interface DividerEntries {
  /** From the wiper to common, Ω; one of {@link loads}. */
  readonly load: Ohms;
  /** The wiper's place on the track, 0 to 1, in whole percents. */
  readonly position: Position;
  readonly limiter: Ohms;
}

/** What the loaded divider shows. */
export interface LoadedDivider {
  readonly circuit: Circuit;
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
  readonly loaded: Curve;
  readonly unloaded: Curve;
  /** The reading at the wiper's place. */
  readonly reading: Volts;
  readonly facts: DividerFacts;
}

/** Loads to choose from, evenly over their logarithm: the values that resistors have, 1 kΩ to 10 MΩ. */
export const loads = ohmsBetween(1000, 10e6);

/** What stands there first. */
export const firstEntries: DividerEntries = { load: 10e3, position: 0.67, limiter: 1000 };

const points = 51;

export function loadedDivider({ load, position, limiter }: DividerEntries): LoadedDivider {
  const bare: Circuit = { source: { volts: 5 }, limiter, sensor: { track: 5000 }, load: {} };
  const circuit: Circuit = { ...bare, load: { pullDown: load } };
  const outputOf = (of: Circuit): Volts => numberOf(operatingPoint(of, position).output);
  const [unloaded, reading] = [outputOf(bare), outputOf(circuit)];
  const { fromUnloaded } = loadingErrors(circuit);
  return {
    circuit,
    closed: operatingPoint(circuit, 0),
    open: operatingPoint(circuit, 1),
    loaded: expectedCurve(circuit, points),
    unloaded: expectedCurve(bare, points),
    reading,
    facts: {
      source: textOf(bare.source.volts, 'V'),
      limiter: textOf(limiter, 'Ω'),
      track: textOf(bare.sensor.track, 'Ω'),
      load: textOf(load, 'Ω'),
      position: textOf(position, '%'),
      above: textOf(1 - position, '%'),
      unloaded: textOf(unloaded, 'V'),
      // The lesson's stops are the track's ends: its travel is the place on the track.
      seen: textOf(sourceResistance(bare, Number(position)), 'Ω'),
      loaded: textOf(reading, 'V'),
      off: textOf(unloaded - reading, 'V'),
      part: textOf((unloaded - reading) / bare.source.volts, '%'),
      most: {
        position: textOf(fromUnloaded.position, '%'),
        off: textOf(fromUnloaded.volts, 'V'),
      },
    },
  };
}
