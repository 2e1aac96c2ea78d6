import {
  type Circuit,
  type Load,
  type OperatingPoint,
  operatingPoint,
  positionAt,
  type Tolerances,
} from '@truesweep/core';
import type { Values } from '../forms/form.js';
import type { benchEntries, hookUpEntries } from './hookUpEntries.js';

type HookUpValues = Values<typeof hookUpEntries>;

/** The parts that every bench circuit has. */
type BenchValues = Values<typeof benchEntries>;

/** The circuit of a plain bench: source, limiting resistor, sensor, instrument. */
export function benchCircuit(values: BenchValues): Circuit {
  const { source, limiter, track, input, closedPosition, openPosition } = values;
  return {
    source: { volts: source },
    limiter,
    sensor: { track, closedPosition, openPosition },
    load: { pullDown: input },
  };
}

/** The circuit of a whole hook-up, with its leads, the wiper's contact and a pull-up. */
export function wholeCircuit(values: HookUpValues): Circuit {
  const { supplyLead, groundLead, contact, pullUp, pullUpVolts } = values;
  const bench = benchCircuit(values);
  const load: Load = {
    ...bench.load,
    ...(pullUp !== undefined && { pullUp: { ohms: pullUp, volts: pullUpVolts } }),
  };
  return {
    ...bench,
    leads: { supply: supplyLead, ground: groundLead },
    sensor: { ...bench.sensor, contact },
    load,
  };
}

/** How far the parts of a hook-up may be off. */
export function tolerancesOf(values: HookUpValues): Tolerances {
  return {
    source: values.sourceTolerance,
    limiter: values.limiterTolerance,
    track: values.trackTolerance,
    closedPosition: values.positionTolerance,
    openPosition: values.positionTolerance,
  };
}

/** A circuit's operating points with the throttle at its stops. */
export function atStops(circuit: Circuit): Readonly<Record<'closed' | 'open', OperatingPoint>> {
  const at = (travel: 0 | 1) => operatingPoint(circuit, positionAt(circuit.sensor, travel));
  return { closed: at(0), open: at(1) };
}
