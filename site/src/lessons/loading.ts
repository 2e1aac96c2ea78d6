import { lessonWords } from '@truesweep/wording/working';
import type { LessonSlider, Places } from './lesson.js';
import type { DividerEntries } from './loadedDivider.js';
import { loads } from './loadedDivider.js';
import { pick } from './pick.js';

export const loadingSliders: readonly LessonSlider[] = [
  { name: 'load', label: lessonWords.load, most: loads.length - 1, first: loads.indexOf(10e3) },
  { name: 'position', label: lessonWords.wiper, most: 100, first: 67 },
];

/** The loaded divider without a limiting resistor: that one is the next lesson's. */
export function loadingAt([load, position = 0]: Places): DividerEntries {
  return { load: pick(loads, load), position: position / 100, limiter: 0 };
}
