import { say } from './say.js';
import { whole } from './whole.js';

const parts = {
  source: 'source',
  limiter: 'limiting resistor',
  track: 'track',
  bottomResidual: 'end residual at the bottom',
  topResidual: 'end residual at the top',
  contact: 'contact of the wiper',
  pullDown: 'load',
  pullUp: 'pull-up',
  pullUpVolts: 'voltage of the pull-up',
  closedPosition: 'wiper’s place at the closed stop',
  openPosition: 'wiper’s place at the open stop',
} as const;

const stops = { closed: 'closed', open: 'open' } as const;

/** What the working of a window for a reading at a stop says. */
export const windowWorkingWords = {
  title: (stop: keyof typeof stops): string =>
    whole(stop, 'stop', () => say`The window of the ${stops[stop]} reading`),
  parts,
  tolerance: (part: keyof typeof parts): string =>
    whole(part, 'part', () => say`tolerance of the ${parts[part]}, either way`),
  place: (stop: keyof typeof stops): string =>
    whole(stop, 'stop', () => say`wiper’s place at the ${stops[stop]} stop`),
  least: 'for the lowest reading',
  most: 'for the highest reading',
  atEnd: (part: keyof typeof parts): string =>
    whole(part, 'part', () => say`The ${parts[part]} at the end of its tolerance`),
  says: (low: string, high: string): string =>
    say`A sound sensor reads from ${low} to ${high} here. The instrument’s own uncertainty is no part of the window: it counts when a reading is held against it.`,
} as const;

/** What the working of a reading's uncertainty says. */
export const budgetWorkingWords = {
  title: (travel: string): string =>
    say`How uncertain the expected reading is at ${travel} of the travel`,
  parts,
  x: 'where the wiper stands there, as a part of the track',
  halfWidth: (part: keyof typeof parts): string =>
    whole(part, 'part', () => say`tolerance of the ${parts[part]}, either way`),
  shareOf: (part: keyof typeof parts): string =>
    whole(part, 'part', () => say`part of the ${parts[part]} that counts at this travel`),
  answersUp: 'Sensitivity of the reading to the resistance up to the source',
  answersDown: 'Sensitivity of the reading to the resistance down to common',
  answersSignal: 'Sensitivity of the reading to the resistance before the load',
  answersLoad: 'Sensitivity of the reading to the load',
  answersLoadVolts: 'Sensitivity of the reading to the voltage behind the load',
  share: 'Part of the voltage at the wiper’s place that the load leaves',
  adds: (part: keyof typeof parts): string =>
    whole(part, 'part', () => say`What the ${parts[part]} adds to the standard uncertainty`),
  budget: 'All contributions side by side',
  columns: ['Part', 'Contribution'],
  combined: 'Standard uncertainty of the reading',
} as const;
