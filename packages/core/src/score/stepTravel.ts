import type { Departure } from '../departures/departure.js';
import { movementBeside } from '../departures/movementBeside.js';
import type { Expectation } from '../expectation/expectation.js';
import { outputFunction } from '../expectation/outputFunction.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import type { Rest } from '../movement/movement.js';
import { type Stops, stopNear } from '../movement/stopsOf.js';
import { onScale, type ThrottleScale, travelAtLevel } from '../movement/throttleScale.js';
import type { Seconds, Travel } from '../units.js';

/** Two steps are one crack's where the levels on their closed side are this near and the shifts alike within a part. */
const onePlace = 0.03;
const alike = 0.25;

/** A step as the crossing of a crack, should it be one. */
export interface Crossing {
  readonly time: Seconds;
  readonly isClosing: boolean;
  /** Level on the crack's closed side, and how far the levels beyond it lie off. */
  readonly level: number;
  readonly shift: number;
}

/**
 * The travel at which a recording steps. A step that comes again at its level is a crack's: the track is what it was
 * on the closed side, and the open stop is read beyond the crack. A step that never comes again is a rotor's that
 * slipped: before it both stops were read as they are, after it with the step.
 *
 * @param steps All of the recording's, from {@link crossingsOf}.
 */
export function stepTravel(
  step: Departure,
  steps: readonly Crossing[],
  levels: Levels,
  movement: Movement,
  expected: Expectation,
  scale: ThrottleScale,
): Travel {
  const here = crossing(step, levels);
  const crossings = steps.filter(
    ({ level, shift }) =>
      Math.abs(level - here.level) <= onePlace &&
      Math.abs(shift - here.shift) <= Math.max(levels.visible, alike * Math.abs(here.shift)),
  );
  const isCrack = crossings.length > 1;
  const stops = isCrack
    ? stopsBesideCrack(crossings, here.shift, movement.rests, levels.visible, expected, scale)
    : stopsBeforeSlip(here.time, step.depth, movement);
  const level = isCrack ? here.level : levels.mean[step.from]!;
  return travelAtLevel(expected, scale, stops, level);
}

/** The steps among a recording's departures, in order of time. */
export function crossingsOf(departures: readonly Departure[], levels: Levels): readonly Crossing[] {
  return departures.filter(({ kind }) => kind === 'step').map((one) => crossing(one, levels));
}

function crossing({ from, to, depth }: Departure, levels: Levels): Crossing {
  const isClosing = movementBeside(levels, from, to) < 0;
  return {
    time: levels.time[from]!,
    isClosing,
    level: levels.mean[isClosing ? to : from]!,
    shift: isClosing ? -depth : depth,
  };
}

/** The stops as they were read before a rotor slipped: those from then where there are any, or those of after it less the step. */
function stopsBeforeSlip(time: Seconds, depth: number, { rests, stops }: Movement): Stops {
  const before = rests.filter(({ end }) => end <= time);
  const after = rests
    .filter(({ start }) => start >= time)
    .map(({ level }) => ({ level: level - depth }));
  const stop = (end: 0 | 1): number | undefined => stopNear(end, before) ?? stopNear(end, after);
  return { closed: stop(0) ?? stops.closed, open: stop(1) ?? stops.open };
}

/**
 * The stops of a track without its crack: the closed one from the rests on the crack's closed side, the open one from
 * those beyond it less the shift. Where the shift took the wiper to the end of the track, the open stop's own level does
 * not show, and it is taken to be where it is expected.
 */
function stopsBesideCrack(
  crossings: readonly Crossing[],
  shift: number,
  rests: readonly Rest[],
  visible: number,
  expected: Expectation,
  scale: ThrottleScale,
): Stops {
  const before: Rest[] = [];
  const beyond: Pick<Rest, 'level'>[] = [];
  let crossed = 0;
  for (const rest of rests) {
    while (crossed < crossings.length && crossings[crossed]!.time <= rest.start) crossed++;
    const isBeyond = crossed > 0 ? !crossings[crossed - 1]!.isClosing : crossings[0]!.isClosing;
    if (isBeyond) beyond.push({ level: rest.level - shift });
    else before.push(rest);
  }
  const read = rests.reduce((most, { level }) => Math.max(most, level), -Infinity);
  const { open } = expected.windows;
  const tolerance = (open.high - open.low) / 2 / Math.abs(scale.span);
  const atEnd = read >= endOfTrack(expected, scale) - Math.max(visible, tolerance / 3);
  return { closed: stopNear(0, before) ?? 0, open: (atEnd ? undefined : stopNear(1, beyond)) ?? 1 };
}

/** Level of the track's own end behind the open stop. */
function endOfTrack({ circuit }: Expectation, scale: ThrottleScale): number {
  const { closedPosition = 0, openPosition = 1 } = circuit.sensor;
  return onScale(scale, outputFunction(circuit)(openPosition > closedPosition ? 1 : 0));
}
