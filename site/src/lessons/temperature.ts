import type { Celsius, PullUpDivider, ThermistorLaw } from '@truesweep/core';
import { lessonWords } from '@truesweep/wording/working';
import type { LessonSlider, Places } from './lesson.js';
import { ohmsBetween } from './ohmsBetween.js';
import { pick } from './pick.js';

const [coldest, warmest, step] = [-20, 110, 5] as const;
const pullUps = ohmsBetween(470, 10_000);

export const temperatureSliders: readonly LessonSlider[] = [
  {
    name: 'temperature',
    label: lessonWords.temperature,
    most: (warmest - coldest) / step,
    first: 8,
  },
  {
    name: 'pull-up',
    label: lessonWords.pullUp,
    most: pullUps.length - 1,
    first: pullUps.indexOf(2200),
  },
];

/** The coolant sensor of the workshop's boats, invented. */
export const temperatureLaw: ThermistorLaw = {
  kind: 'b',
  b: 3500,
  ohms: 2500,
  from: 20,
  to: 85,
  lowest: coldest,
  highest: warmest,
};

/** The temperatures that are drawn, °C. */
export const drawnTemperatures: readonly Celsius[] = Array.from(
  { length: 14 },
  (_, i) => coldest + 10 * i,
);

/** A thermistor on its pull-up. */
export function temperatureAt([temperature = 0, pullUp]: Places): {
  readonly temperature: Celsius;
  readonly divider: PullUpDivider;
} {
  return {
    temperature: coldest + temperature * step,
    divider: { supply: 5, pullUp: pick(pullUps, pullUp) },
  };
}
