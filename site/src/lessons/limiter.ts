import type { Circuit, Connection, Position, Ratings } from '@truesweep/core';
import { lessonWords } from '@truesweep/wording/working';
import { bench } from './bench.js';
import type { LessonSlider, Places } from './lesson.js';
import { ohmsBetween } from './ohmsBetween.js';
import { pick } from './pick.js';

const limiters = ohmsBetween(100, 4700);

export const limiterSliders: readonly LessonSlider[] = [
  {
    name: 'limiter',
    label: lessonWords.limiter,
    most: limiters.length - 1,
    first: limiters.indexOf(1000),
  },
  { name: 'position', label: lessonWords.wiperAtMistake, most: 100, first: 95 },
];

/** The lead that should be on the track's end sits on the wiper. */
export const wrongConnection: Connection = { supply: 'top', ground: 'wiper', signal: 'bottom' };

/** What the wiper of the lesson's sensor bears; invented. */
export const limiterRatings: Ratings = { wiper: { amps: 0.001, shortTerm: 0.005 } };

/** The bench with its limiting resistor, and where the wiper stands while a lead sits wrongly. */
export function limiterAt([limiter, position = 0]: Places): {
  readonly circuit: Circuit;
  readonly position: Position;
} {
  return {
    circuit: { ...bench, limiter: pick(limiters, limiter) },
    position: position / 100,
  };
}
