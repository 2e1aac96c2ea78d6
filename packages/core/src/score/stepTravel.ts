import type { Departure } from '../departures/departure.js';
import { movementBeside } from '../departures/movementBeside.js';
import type { Expectation } from '../expectation/expectation.js';
import { outputFunction } from '../expectation/outputFunction.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import type { Rest } from '../movement/movement.js';
import { type Stops, stopNear } from '../movement/stopsOf.js';
import { onScale, type ThrottleScale, travelAtLevel } from '../movement/throttleScale.js';
import type { Seconds, Travel, Volts } from '../units.js';
import { crackTravel } from './crackTravel.js';

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
 * The travel at which a recording steps. A step that comes again at its level is a crack's: a resistance across the track, or one beyond
 * which the track lies on another line, whichever leaves the stops nearer to where they are expected. A step that never comes again is a rotor's that
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
  if (crossings.length < 2) {
    const stops = stopsBeforeSlip(here.time, step.depth, movement);
    return travelAtLevel(expected, scale, stops, levels.mean[step.from]!);
  }
  const sides = restsBeside(crossings, movement.rests);
  const stops = stopsBesideCrack(sides, here.shift, levels.visible, expected, scale);
  const volts = (level: number): Volts => scale.closed + level * scale.span;
  const closed = Math.min(...sides.closed);
  const open = Math.max(...sides.open);
  const resistive = crackTravel(
    {
      closedSide: volts(here.level),
      openSide: volts(here.level + here.shift),
      ...(closed < Infinity && { closedStop: volts(closed) }),
      ...(open > -Infinity && { openStop: volts(open) }),
    },
    expected.circuit,
  );
  const shifted = Math.min(1 + here.shift, endOfTrack(expected, scale));
  const stopsOff =
    (closed < Infinity ? Math.abs(closed) : 0) + (open > -Infinity ? Math.abs(open - shifted) : 0);
  return resistive && resistive.stopsOff < stopsOff
    ? resistive.travel
    : travelAtLevel(expected, scale, stops, here.level);
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

/** The levels of the rests on either side of a crack. */
function restsBeside(
  crossings: readonly Crossing[],
  rests: readonly Rest[],
): { readonly closed: readonly number[]; readonly open: readonly number[] } {
  const [closed, open]: [number[], number[]] = [[], []];
  let crossed = 0;
  for (const { start, level } of rests) {
    while (crossed < crossings.length && crossings[crossed]!.time <= start) crossed++;
    const isBeyond = crossed > 0 ? !crossings[crossed - 1]!.isClosing : crossings[0]!.isClosing;
    (isBeyond ? open : closed).push(level);
  }
  return { closed, open };
}

/**
 * The stops of a track without its crack: the closed one from the rests on the crack's closed side, the open one from
 * those beyond it less the shift. Where the shift took the wiper to the end of the track, the open stop's own level does
 * not show, and it is taken to be where it is expected.
 */
function stopsBesideCrack(
  sides: ReturnType<typeof restsBeside>,
  shift: number,
  visible: number,
  expected: Expectation,
  scale: ThrottleScale,
): Stops {
  const before = sides.closed.map((level) => ({ level }));
  const beyond = sides.open.map((level) => ({ level: level - shift }));
  const read = Math.max(...sides.closed, ...sides.open);
  const { open } = expected.windows;
  const tolerance = (open.high - open.low) / 2 / Math.abs(scale.span);
  const atEnd = read >= endOfTrack(expected, scale) - Math.max(visible, tolerance / 3);
  return { closed: stopNear(0, before) ?? 0, open: (atEnd ? undefined : stopNear(1, beyond)) ?? 1 };
}

/** Level of the track's own end behind a stop. */
export function endOfTrack(
  { circuit }: Expectation,
  scale: ThrottleScale,
  stop: 0 | 1 = 1,
): number {
  const { closedPosition = 0, openPosition = 1 } = circuit.sensor;
  return onScale(scale, outputFunction(circuit)(openPosition > closedPosition ? stop : 1 - stop));
}
