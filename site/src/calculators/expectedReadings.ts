import {
  type Circuit,
  type Curve,
  type ExpectedWindows,
  expectedCurve,
  expectedWindows,
  type OperatingPoint,
  type OutputUncertainty,
  outputUncertainty,
  positionAt,
  type Volts,
} from '@truesweep/core';
import { entryHints, entryLabels, readingsWords } from '@truesweep/wording';
import type { Form, Values } from '../forms/form.js';
import { atStops, tolerancesOf, wholeCircuit } from './hookUp.js';
import { benchNames, hookUpEntries } from './hookUpEntries.js';

const tolerances = [
  'sourceTolerance',
  'limiterTolerance',
  'trackTolerance',
  'positionTolerance',
] as const;
const furtherParts = ['supplyLead', 'groundLead', 'contact', 'pullUp', 'pullUpVolts'] as const;

/** The form: a whole hook-up with its tolerances. */
export const expectedReadingsForm: Form<typeof hookUpEntries> = {
  groups: [
    { title: readingsWords.parts, names: benchNames },
    { title: readingsWords.tolerances, names: tolerances, folded: true },
    { title: readingsWords.furtherParts, names: furtherParts, folded: true },
  ],
  entries: hookUpEntries,
  labels: entryLabels,
  hints: entryHints,
};

/** What a sound sensor reads on a hook-up. */
export interface ExpectedReadings {
  readonly circuit: Circuit;
  readonly curve: Curve;
  readonly windows: ExpectedWindows;
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
  /** What makes up the band at each stop. */
  readonly closedUncertainty: OutputUncertainty;
  readonly openUncertainty: OutputUncertainty;
  /** The open reading straight from the source, with no limiting resistor and no load, V. */
  readonly straight: Volts;
}

export function expectedReadings(values: Values<typeof hookUpEntries>): ExpectedReadings {
  const circuit = wholeCircuit(values);
  const given = tolerancesOf(values);
  return {
    circuit,
    curve: expectedCurve(circuit),
    windows: expectedWindows(circuit, given),
    ...atStops(circuit),
    closedUncertainty: outputUncertainty(circuit, given, 0),
    openUncertainty: outputUncertainty(circuit, given, 1),
    straight: circuit.source.volts * positionAt(circuit.sensor, 1),
  };
}
