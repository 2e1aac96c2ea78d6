import type { ModelledDropout } from './dropout.js';
import { deepest } from './dropout.js';
import { moveNeedle, type NeedleMovement, type NeedleState } from './needleMovement.js';

/** So many steps a natural period are followed: fine enough for the peak to a ten-thousandth of it. */
const stepsPerPeriod = 400;
/** A needle comes back from its peak within so many periods. */
const periods = 3;

/** The farthest that a needle goes for a dropout, as a part of the deflection that the depth stands for. */
export function needlePulse(movement: NeedleMovement, dropout: ModelledDropout): number {
  const { seconds, fall = 0, recovery = 0 } = dropout;
  const period = (2 * Math.PI) / movement.naturalFrequency;
  const step = period / stepsPerPeriod;
  const reached = deepest(dropout);
  const input = (t: number): number => {
    if (t <= seconds) return fall === 0 ? 1 : -Math.expm1(-t / fall);
    return recovery === 0 ? 0 : reached * Math.exp(-(t - seconds) / recovery);
  };
  let state: NeedleState = { deflection: 0, speed: 0 };
  let most = 0;
  const follow = (from: number, to: number, isOpen: boolean): void => {
    const count = Math.max(1, Math.ceil((to - from) / step));
    for (let i = 0; i < count; i++) {
      const [start, end] = [
        from + ((to - from) * i) / count,
        from + ((to - from) * (i + 1)) / count,
      ];
      const at = (t: number): number =>
        isOpen
          ? input(Math.min(t, seconds))
          : t > seconds
            ? input(t)
            : recovery === 0
              ? 0
              : reached;
      state = moveNeedle(movement, state, [at(start), at(end)], end - start);
      most = Math.max(most, Math.abs(state.deflection));
    }
  };
  const held = Math.min(seconds, periods * period + 20 * fall);
  follow(0, held, true);
  if (held === seconds) follow(seconds, seconds + periods * period + recovery, false);
  return most;
}
