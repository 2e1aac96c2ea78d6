import type { Seconds } from '../units.js';
import { deepest, type ModelledDropout } from './dropout.js';
import { moveNeedle, type NeedleMovement, type NeedleState } from './needleMovement.js';

/** So many steps a natural period are followed: fine enough for the peak to a ten-thousandth of it. */
const stepsPerPeriod = 400;
/** A needle comes back from its peak within so many periods. */
const periods = 3;

/** The farthest that a needle goes for a dropout, as a part of the deflection that the depth stands for. */
export function needlePulse(movement: NeedleMovement, dropout: ModelledDropout): number {
  const { seconds, fall = 0, recovery = 0 } = dropout;
  const period = (2 * Math.PI) / movement.naturalFrequency;
  let state: NeedleState = { deflection: 0, speed: 0 };
  let most = 0;
  const follow = (length: Seconds, input: (since: Seconds) => number): void => {
    const count = Math.max(1, Math.ceil((length * stepsPerPeriod) / period));
    for (let i = 0; i < count; i++) {
      const [start, end] = [(length * i) / count, (length * (i + 1)) / count];
      state = moveNeedle(movement, state, [input(start), input(end)], end - start);
      most = Math.max(most, Math.abs(state.deflection));
    }
  };
  const settled = periods * period + 20 * fall;
  follow(Math.min(seconds, settled), (since) => (fall === 0 ? 1 : -Math.expm1(-since / fall)));
  if (seconds > settled) return most;
  const reached = deepest(dropout);
  follow(periods * period + recovery, (since) =>
    recovery === 0 ? 0 : reached * Math.exp(-since / recovery),
  );
  return most;
}
