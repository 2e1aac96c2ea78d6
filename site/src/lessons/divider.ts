import type { Circuit, Position } from '@truesweep/core';
import { lessonWords } from '@truesweep/wording/working';
import type { LessonSlider, Places } from './lesson.js';
import { ohmsBetween } from './ohmsBetween.js';
import { pick } from './pick.js';

const tracks = ohmsBetween(1000, 10_000);

export const dividerSliders: readonly LessonSlider[] = [
  { name: 'position', label: lessonWords.wiper, most: 100, first: 60 },
  { name: 'track', label: lessonWords.track, most: tracks.length - 1, first: tracks.indexOf(4700) },
];

/** A track on the 5 V of a control unit, with nothing on its wiper. */
export function dividerAt([position = 0, track]: Places): {
  readonly circuit: Circuit;
  readonly position: Position;
} {
  return {
    circuit: {
      source: { volts: 5 },
      limiter: 0,
      sensor: { track: pick(tracks, track) },
      load: {},
    },
    position: position / 100,
  };
}
