import { explainTrack } from '@truesweep/explain';
import { findTerminals } from '../calculators/findTerminals.js';
import { type Written, written } from './written.js';

/** The track and the wiper's place of a potentiometer, from the readings at each stop. */
export function workings(values: Parameters<typeof findTerminals>[0]): readonly Written[] {
  const found = findTerminals(values);
  if (found.kind !== 'potentiometer') return [];
  const {
    wiper,
    ends: [bottom, top],
  } = found.tracks[0];
  return written(
    ...(['closed', 'open'] as const).flatMap((stop) => {
      const read = (...pair: readonly [string, string]): number | undefined =>
        values[`${[...pair].sort().join('')}${stop}` as keyof typeof values];
      const [ends, toWiper, fromWiper] = [read(bottom, top), read(bottom, wiper), read(wiper, top)];
      return ends === undefined || toWiper === undefined || fromWiper === undefined
        ? []
        : [() => explainTrack({ ends, toWiper, fromWiper }, stop)];
    }),
  );
}
