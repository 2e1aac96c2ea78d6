import { expect, test } from 'vitest';
import { randomStream } from '../simulator/randomStream.js';
import { advance, drawThrottle, fallTime, noArm, type Plate, type Throttle } from './throttle.js';

const plain: Throttle = {
  preload: 2000,
  stiffness: 0,
  viscous: 0,
  friction: 0,
  stiction: 0,
  seat: { below: 0, friction: 0 },
  dashpot: { below: 0, viscous: 0 },
  closedStop: { restitution: 0.5, frequency: 0 },
  openStop: { restitution: 0.5, frequency: 0 },
};
const step = 2e-5;

/** Heights and instants of the tops after each impact. */
function tops(throttle: Throttle, count: number): { height: number; at: number }[] {
  const plate: Plate = { travel: 1, speed: 0, stop: 0, impact: 0 };
  const found: { height: number; at: number }[] = [];
  let rising = false;
  for (let i = 0; found.length < count && i < 1e6; i++) {
    advance(throttle, noArm(), plate, step);
    if (plate.speed > 0) rising = true;
    else if (rising) {
      rising = false;
      found.push({ height: plate.travel, at: i * step });
    }
  }
  return found;
}

// Textbook mechanics of constant acceleration.
test('falls freely for √(2θJ/T), and half the way in 71 % of it', () => {
  for (const preload of [30, 400, 2000, 30_000]) {
    const throttle = { ...plain, preload };
    const whole = Math.sqrt(2 / preload);
    expect(Math.abs(fallTime(throttle, 1, step) - whole)).toBeLessThan(2 * step);
    expect(fallTime(throttle, 0.5, step) / whole).toBeCloseTo(Math.SQRT1_2, 2);
  }
});

test('rises e² of the drop, each time again', () => {
  for (const restitution of [0.3, 0.5, 0.6]) {
    const stop = { restitution, frequency: 0 };
    const [first, second] = tops({ ...plain, closedStop: stop }, 2);
    expect(first!.height / restitution ** 2).toBeCloseTo(1, 2);
    expect(second!.height / restitution ** 4).toBeCloseTo(1, 1);
    const time = restitution * Math.sqrt(2 / plain.preload) * (1 + restitution);
    expect((second!.at - first!.at) / time).toBeCloseTo(1, 1);
  }
});

test('a soft stop gives back a little more than its restitution', () => {
  const frequency = Math.sqrt(2 * 200) / 0.008;
  const soft = { restitution: 0.4, frequency };
  const [first] = tops({ ...plain, preload: 200, closedStop: soft, openStop: soft }, 1);
  // More than e², since its damper does not hold the plate back as it leaves.
  expect(Math.sqrt(first!.height) / 0.4).toBeGreaterThan(1);
  expect(Math.sqrt(first!.height) / 0.4).toBeLessThan(1.25);
});

test('friction takes its share of fall and rebound', () => {
  const [first] = tops({ ...plain, friction: 400, stiction: 400 }, 1);
  // e² of the drop, fallen with T₀ − T_f, risen against T₀ + T_f.
  expect(first!.height).toBeCloseTo((0.25 * 1600) / 2400, 2);
});

test('holds still where stiction exceeds what pulls', () => {
  const plate: Plate = { travel: 0.4, speed: 0, stop: 0, impact: 0 };
  for (let i = 0; i < 1000; i++)
    advance({ ...plain, friction: 1900, stiction: 2100 }, noArm(), plate, step);
  expect(plate).toEqual({ travel: 0.4, speed: 0, stop: 0, impact: 0 });
});

test('energy never grows without a hand', () => {
  const random = randomStream(3);
  let grown = 0;
  for (let n = 0; n < 20; n++) {
    const throttle = drawThrottle(random);
    const { preload, stiffness } = throttle;
    const plate: Plate = { travel: random.between(0.3, 1), speed: 0, stop: 0, impact: 0 };
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 10_000; i++) {
      advance(throttle, noArm(), plate, step);
      const { travel, speed } = plate;
      // A soft stop holds some of it for a moment.
      if (travel < 0.002 && throttle.closedStop.frequency > 0) continue;
      const energy = speed ** 2 / 2 + preload * travel + (stiffness * travel ** 2) / 2;
      // Speed is half a step ahead of travel.
      const ahead = (preload + stiffness) * Math.abs(speed) * step;
      if (energy > least + 2 * ahead + 1e-9) grown++;
      least = Math.min(least, energy);
    }
  }
  expect(grown).toBe(0);
});

test('drawn throttles fall in 8 ms to 0.3 s without their dashpot', () => {
  const random = randomStream(11);
  const falls = Array.from({ length: 60 }, () =>
    fallTime({ ...drawThrottle(random), dashpot: { below: 0, viscous: 0 } }, 1, 1e-4),
  );
  expect(Math.min(...falls)).toBeGreaterThanOrEqual(0.008);
  expect(Math.max(...falls)).toBeLessThanOrEqual(0.3);
  expect(Math.min(...falls)).toBeLessThan(0.02);
  expect(Math.max(...falls)).toBeGreaterThan(0.12);
});
