import { kinds } from '../measure.js';
import type { Kind } from '../trueEvents.js';
import type { Figure } from './measureWorld.js';

/** What a figure is to reach, and what is asserted of it until it does. */
export interface WorldGoal {
  readonly name: string;
  /** `most`: no more; `least`: no less. */
  readonly side: 'most' | 'least';
  readonly goal: number;
  /** Asserted, by world. */
  readonly holds: Readonly<Record<'plate' | 'habits', number>>;
}

const most = (name: string, goal: number, plate: number, habits: number): WorldGoal => ({
  name,
  side: 'most',
  goal,
  holds: { plate, habits },
});
const least = (name: string, goal: number, plate: number, habits: number): WorldGoal => ({
  ...most(name, goal, plate, habits),
  side: 'least',
});

/** Recall and precision that hold of each kind, in the plate's world and in that of habits. */
const ofKinds: Readonly<
  Record<'recall' | 'precision', Readonly<Record<Kind, readonly [number, number]>>>
> = {
  recall: {
    dropout: [0.99, 0.83],
    spike: [0.99, 0.87],
    step: [0.96, 0.16],
    'dead-spot': [0.83, 0.99],
    rough: [0.93, 0.92],
  },
  precision: {
    dropout: [0.95, 0.99],
    spike: [0.92, 0.99],
    step: [0.91, 0.71],
    'dead-spot': [0.83, 0.58],
    rough: [0.99, 0.99],
  },
};

export const worldGoals: readonly WorldGoal[] = [
  least('verdict right', 0.98, 0.98, 0.96),
  most('sound judged fail', 0.003, 0, 0),
  most('sound judged fail or marginal', 0.01, 0, 0.02),
  most('visible fault passed', 0.005, 0, 0.084),
  most('not fail where only fail is fair', 0.02, 0, 0),
  most('sound, adequate, judged inconclusive', 0.03, 0.048, 0),
  least('cause right', 0.95, 0.96, 0.96),
  ...kinds.map((kind) => least(`recall of ${kind}`, 0.95, ...ofKinds.recall[kind])),
  ...kinds.map((kind) => least(`precision of ${kind}`, 0.95, ...ofKinds.precision[kind])),
  most('bounces named a fault', 0.005, 0, 0.0056),
  most('median travel error', 0.004, 0.006, 0.0047),
  most('95th percentile of travel error', 0.015, 0.074, 0.017),
];

/** Whether a figure keeps a limit; of nothing there is nothing to keep. */
export function keeps({ value }: Figure, side: WorldGoal['side'], limit: number): boolean {
  if (value === undefined) return true;
  return side === 'most' ? value <= limit : value >= limit;
}
