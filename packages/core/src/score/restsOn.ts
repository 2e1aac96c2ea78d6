import type { Coverage, RestsOn } from './score.js';

/** What is asked of a recording: three openings, as many closings, and as many snaps. Common practice, no source. */
const looksAskedFor = 6;
const snapsAskedFor = 3;
/** A worn spot lifts on this part of its passes, or oftener. */
const lifts = 0.5;

/** How often a recording looked at the place that it looked at least, and how often it shows the spring. */
export function restsOn({ opening, closing }: Coverage, snaps: number): RestsOn {
  const looks = opening.reduce(
    (fewest, count, tenth) => Math.min(fewest, count + closing[tenth]!),
    Infinity,
  );
  const missedChance = (1 - lifts) ** looks;
  return { looks, looksAskedFor, snaps, snapsAskedFor, missedChance };
}

/** Whether it rests on less than is asked for. */
export function isShort({ looks, looksAskedFor, snaps, snapsAskedFor }: RestsOn): boolean {
  return looks < looksAskedFor || snaps < snapsAskedFor;
}
