import {
  type Circuit,
  type Curve,
  expectedCurve,
  formatQuantity,
  isDetermined,
  loadingErrors,
  type Ohms,
  type OperatingPoint,
  operatingPoint,
  type Position,
  preferredValues,
  type QuantityUnit,
  sourceResistance,
  type Volts,
} from '@truesweep/core';
import type { DividerFacts } from '@truesweep/wording';

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
export const loads: readonly Ohms[] = [
  ...[10, 100, 1000, 10_000].flatMap((ten) => preferredValues('E12').map((value) => value * ten)),
  10e6,
];

/** What stands there first. */
export const firstEntries: DividerEntries = { load: 10e3, position: 0.67, limiter: 1000 };

const points = 51;

export function loadedDivider({ load, position, limiter }: DividerEntries): LoadedDivider {
  const bare: Circuit = { source: { volts: 5 }, limiter, sensor: { track: 5000 }, load: {} };
  const circuit: Circuit = { ...bare, load: { pullDown: load } };
  const [unloaded, reading] = [outputAt(bare, position), outputAt(circuit, position)];
  const { fromUnloaded } = loadingErrors(circuit);
  return {
    circuit,
    closed: operatingPoint(circuit, 0),
    open: operatingPoint(circuit, 1),
    loaded: expectedCurve(circuit, points),
    unloaded: expectedCurve(bare, points),
    reading,
    facts: {
      source: written(bare.source.volts, 'V'),
      limiter: written(limiter, 'Ω'),
      track: written(bare.sensor.track, 'Ω'),
      load: written(load, 'Ω'),
      position: written(position, '%'),
      above: written(1 - position, '%'),
      unloaded: written(unloaded, 'V'),
      // The lesson's stops are the track's ends: its travel is the place on the track.
      seen: written(sourceResistance(bare, Number(position)), 'Ω'),
      loaded: written(reading, 'V'),
      off: written(unloaded - reading, 'V'),
      part: written((unloaded - reading) / bare.source.volts, '%'),
      most: {
        position: written(fromUnloaded.position, '%'),
        off: written(fromUnloaded.volts, 'V'),
      },
    },
  };
}

function outputAt(circuit: Circuit, position: Position): Volts {
  const { output } = operatingPoint(circuit, position);
  // A source, a track and resistors that are there always have one.
  if (!isDetermined(output)) throw new Error(`A divider without a reading: ${output.reason}.`);
  return output;
}

function written(value: number, unit: QuantityUnit): string {
  return formatQuantity(value, unit, { trim: true });
}
