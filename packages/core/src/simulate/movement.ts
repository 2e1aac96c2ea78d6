import type { RandomNumbers } from '../statistics/randomNumbers.js';
import type { Fraction, Seconds, Travel } from '../units.js';

/** Holds the throttle where it is. */
export interface Hold {
  readonly kind: 'hold';
  /** For how long, s, 0 or more. */
  readonly seconds: Seconds;
}

/** Turns the throttle by hand. */
export interface Turn {
  readonly kind: 'turn';
  /** Travel that it is turned to, 0 closed to 1 open. */
  readonly to: Travel;
  /** How long that takes, s, above 0. */
  readonly seconds: Seconds;
  /** Size of the hand's slow waviness as a fraction of travel, 0 to 1; 0 when left out. */
  readonly unevenness?: Travel;
}

/** Lets go: the spring closes the throttle, which bounces on its stop. */
export interface Snap {
  readonly kind: 'snap';
  /** From letting go to the first touch of the stop. */
  readonly seconds: Seconds;
  /** Speed after a touch of the stop as a fraction of the speed before, 0 to 0.9. */
  readonly restitution: Fraction;
}

/** What the throttle of a simulated sweep does; its `kind` tells which. */
export type SimulatedMovement = Hold | Turn | Snap;

/** Travel over time: a piece of a movement of known length. */
export interface TravelPiece {
  readonly seconds: Seconds;
  readonly at: (time: Seconds) => Travel;
}

/** Turns a list of movements, beginning at the closed stop, into travel over time. */
export function travelPieces(
  movements: readonly SimulatedMovement[],
  random: RandomNumbers,
): readonly TravelPiece[] {
  let here: Travel = 0;
  return movements.map((movement) => {
    const from = here;
    if (movement.kind === 'hold') return { seconds: movement.seconds, at: () => from };
    here = movement.kind === 'turn' ? movement.to : 0;
    return movement.kind === 'turn' ? turn(from, movement, random) : snap(from, movement);
  });
}

/**
 * A hand's movement between two places: least jerk (T. Flash and N. Hogan, Journal of Neuroscience 5, 1985; from memory)
 * with a waviness of a few hertz on top.
 */
function turn(
  from: Travel,
  { to, seconds, unevenness = 0 }: Turn,
  random: RandomNumbers,
): TravelPiece {
  const waves = [1.1, 1.9, 3.1].map((hertz) => ({
    rate: 2 * Math.PI * hertz,
    phase: 2 * Math.PI * random.uniform(),
  }));
  const at = (time: Seconds): Travel => {
    const s = Math.min(1, Math.max(0, time / seconds));
    const smooth = s * s * s * (10 + s * (6 * s - 15));
    const wave = waves.reduce((sum, { rate, phase }) => sum + Math.sin(rate * time + phase), 0) / 3;
    const travel = from + (to - from) * smooth + 16 * unevenness * wave * (s * (1 - s)) ** 2;
    return Math.min(1, Math.max(0, travel));
  };
  return { seconds, at };
}

/**
 * A closing under constant acceleration; each touch of the stop returns a fraction of the speed, so that
 * the rebounds are parabolas whose heights fall by the square of that fraction.
 */
function snap(from: Travel, { seconds, restitution }: Snap): TravelPiece {
  const acceleration = (2 * from) / (seconds * seconds);
  const rebounds: { start: Seconds; speed: number; seconds: Seconds }[] = [];
  let start = seconds;
  let speed = restitution * acceleration * seconds;
  while (acceleration > 0 && (speed * speed) / (2 * acceleration) > 1e-4) {
    const length = (2 * speed) / acceleration;
    rebounds.push({ start, speed, seconds: length });
    start += length;
    speed *= restitution;
  }
  const at = (time: Seconds): Travel => {
    if (time < seconds) return from - (acceleration * time * time) / 2;
    const rebound = rebounds.find((one) => time >= one.start && time < one.start + one.seconds);
    if (!rebound) return 0;
    const since = time - rebound.start;
    return Math.max(0, rebound.speed * since - (acceleration * since * since) / 2);
  };
  return { seconds: start, at };
}
