import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { movementOf, moveNeedle, type NeedleMovement, type NeedleState } from './needleMovement.js';

const rest: NeedleState = { deflection: 0, speed: 0 };
const stepAt = (movement: NeedleMovement, seconds: number) =>
  moveNeedle(movement, rest, [1, 1], seconds).deflection;

/** The step response as textbooks print it (K. Ogata, Modern Control Engineering, transient response; from memory). */
function closedForm({ naturalFrequency: w, damping: z }: NeedleMovement, t: number): number {
  if (z === 1) return 1 - Math.exp(-w * t) * (1 + w * t);
  if (z < 1) {
    const own = w * Math.sqrt(1 - z * z);
    return 1 - Math.exp(-z * w * t) * (Math.cos(own * t) + ((z * w) / own) * Math.sin(own * t));
  }
  const root = Math.sqrt(z * z - 1);
  const [slow, fast] = [w * (z - root), w * (z + root)];
  return 1 - (fast * Math.exp(-slow * t) - slow * Math.exp(-fast * t)) / (fast - slow);
}

describe('a step', () => {
  test.each([0, 0.2, 0.7, 0.99, 1, 1.01, 3, 40])(
    'damping %d, against the closed form',
    (damping) => {
      const movement = { naturalFrequency: 11, damping };
      for (let t = 0; t < 2; t += 0.01) {
        expect(Math.abs(stepAt(movement, t) - closedForm(movement, t))).toBeLessThan(1e-11);
      }
    },
  );

  test('in two parts or in one', () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    const short = fc.double({ min: 1e-6, max: 1, noNaN: true });
    const damping = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(
        damping,
        number,
        number,
        number,
        number,
        short,
        short,
        (z, at, speed, from, to, one, two) => {
          const movement = { naturalFrequency: 9, damping: z };
          const state = { deflection: at, speed };
          const middle = from + ((to - from) * one) / (one + two);
          const half = moveNeedle(movement, state, [from, middle], one);
          const parts = moveNeedle(movement, half, [middle, to], two);
          const whole = moveNeedle(movement, state, [from, to], one + two);
          const scale = 1 + Math.abs(to - from) / (one + two);
          expect(Math.abs(parts.deflection - whole.deflection)).toBeLessThan(1e-9 * scale);
          expect(Math.abs(parts.speed - whole.speed)).toBeLessThan(1e-7 * scale);
        },
      ),
      { numRuns: 300 * soak },
    );
  });
});

/** The general solver, which the types of its package leave out. */
type Solve = (
  slope: (t: number, state: number[]) => number[],
  times: readonly number[],
  start: readonly number[],
  options: { readonly tol: number; readonly maxStep: number; readonly maxIter: number },
) => { readonly t: number[]; readonly y: number[][] };

test.each([0.3, 0.8127, 1, 1.7])(
  'damping %d, against a general solver of differential equations',
  (z) => {
    const math = create(all!) as unknown as { readonly solveODE: Solve };
    const w = 13.5;
    const movement = { naturalFrequency: w, damping: z };
    // A step of 1 that falls as a ramp to 0.4 within 0.8 s.
    const input = (t: number) => 1 - 0.75 * t;
    const solved = math.solveODE(
      (t: number, [y = 0, v = 0]: number[]) => [v, w * w * (input(t) - y) - 2 * z * w * v],
      [0, 0.8],
      [0, 0],
      { tol: 1e-13, maxStep: 1e-3, maxIter: 1e6 },
    );
    let largest = 0;
    for (const [i, t] of solved.t.entries()) {
      const { deflection } = moveNeedle(movement, rest, [1, input(t)], t);
      largest = Math.max(largest, Math.abs(deflection - solved.y[i]![0]!));
    }
    expect(solved.t.length).toBeGreaterThan(500);
    expect(largest).toBeLessThan(1e-9);
  },
);

/**
 * IEC 60268-17: 99 % of a step in 300 ms, 1 to 1.5 % overshoot. Source: the published structure of a volume indicator in the documentation of
 * ossia (0.8127169864286775, 13.511933333385695 rad/s for 1.25 %; its ω₀ is rounded, y(0.3) = 0.99000028).
 */
describe('the volume indicator of IEC 60268-17', () => {
  test('1.25 % gives the published damping, and its natural frequency to 2e-6', () => {
    const { damping, naturalFrequency } = movementOf(0.3, 0.0125);
    expect(damping).toBeCloseTo(0.8127169864286775, 13);
    expect(Math.abs(naturalFrequency / 13.511933333385695 - 1)).toBeLessThan(2e-6);
    expect(stepAt({ damping, naturalFrequency: 13.511933333385695 }, 0.3)).toBeCloseTo(
      0.99000028,
      8,
    );
  });

  // Computed: damping, natural frequency in rad/s, time of the peak in s.
  test.each([
    [0.01, 0.826085054614, 13.972038346743, 0.398989209],
    [0.0125, 0.8127169864287, 13.511912562533, 0.399042222],
    [0.015, 0.8007485777191, 13.12554375671, 0.399581445],
  ])('overshoot %d', (overshoot, damping, naturalFrequency, peak) => {
    const found = movementOf(0.3, overshoot);
    expect(found.damping).toBeCloseTo(damping, 12);
    expect(found.naturalFrequency).toBeCloseTo(naturalFrequency, 9);
    expect(stepAt(found, 0.3)).toBeCloseTo(0.99, 12);
    expect(stepAt(found, peak)).toBeCloseTo(1 + overshoot, 12);
    expect(stepAt(found, peak - 0.01)).toBeLessThan(1 + overshoot);
    expect(stepAt(found, peak + 0.01)).toBeLessThan(1 + overshoot);
  });
});

test('what no movement can be is refused', () => {
  expect(() => movementOf(0, 0.01)).toThrow(expect.objectContaining({ path: 'seconds' }));
  expect(() => movementOf(0.3, 0.9)).toThrow(expect.objectContaining({ path: 'overshoot' }));
});
