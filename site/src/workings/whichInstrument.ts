import { dropoutOf, exampleInstruments } from '@truesweep/core';
import { explainDropoutChance } from '@truesweep/explain';
import {
  ownRecorder,
  passes,
  type SoughtValues,
  soughtCircuit,
} from '../calculators/whichInstrument.js';
import { type Written, written } from './written.js';

/** The chance of each instrument to show the spot in one pass. */
export function workings(values: SoughtValues): readonly Written[] {
  const circuit = soughtCircuit(values);
  const own = ownRecorder(values);
  const instruments = [...(own ? [own] : []), ...exampleInstruments];
  const { stroke, travel, width } = values;
  return written(
    ...instruments.map((instrument) => () => {
      const dropout = dropoutOf(circuit, instrument, travel, width * stroke, 1 / stroke);
      return explainDropoutChance(instrument, dropout, passes);
    }),
  );
}
