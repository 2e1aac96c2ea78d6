import { explainThermistorFit } from '@truesweep/explain';
import { curveFit } from '../calculators/curveFit.js';
import { type Written, written } from './written.js';

/** The law through two points or three. */
export function workings(values: Parameters<typeof curveFit>[0]): readonly Written[] {
  const { points } = curveFit(values);
  return written(() =>
    explainThermistorFit(points.map(({ temperature, ohms }) => ({ temperature, ohms }))),
  );
}
