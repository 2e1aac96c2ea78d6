import { describe, expect, test } from 'vitest';
import { findStrokes } from '../movement/movement.js';
import { judgeStarts } from './judgeStarts.js';

const interval = 5e-4;

/** Four strokes of this form, the way from 0 to 1 over seconds, each with 0.3 s of rest before it. */
function judge(up: (t: number) => number, down: (t: number) => number = up, strokes = 4) {
  const each = 2600;
  const time = Float64Array.from({ length: strokes * each }, (_, i) => i * interval);
  const path = time.map((_, i) => {
    const number = Math.floor(i / each);
    const t = (i % each) * interval - 0.3;
    const form = number % 2 === 0 ? up : down;
    const way = t <= 0 ? 0 : Math.min(1, form(t));
    return number % 2 === 0 ? way : 1 - way;
  });
  return judgeStarts(time, path, { strokes: findStrokes(time, path) }, { visible: 0.015 });
}

const hand = (seconds: number) => (t: number) => {
  const u = Math.min(1, t / seconds);
  return u * u * (3 - 2 * u);
};
/** By hand, its beginning and end hidden by a track that is flat beside its stops. */
const hidden = (seconds: number) => (t: number) =>
  Math.min(1, (hand(seconds)(t + 0.15 * seconds) - 0.06) / 0.88);
/** Half of the way in 0.6 s, the rest at half of that speed. */
const uneven = (t: number) => Math.min(t / 1.2, 0.3 + 0.4 * (t - 0.36));
const steady = (seconds: number) => (t: number) => t / seconds;
const fall = (seconds: number) => (t: number) => (t / seconds) ** 2;
const charging = (tau: number) => (t: number) => 1 - Math.exp(-t / tau);

describe('judgeStarts', () => {
  test.each([
    ['a slow hand', hand(1), hand(1)],
    ['a quick hand', hand(0.2), hand(0.2)],
    ['a slow hand over flat ends', hidden(1), hidden(1)],
    ['a quick hand over flat ends', hidden(0.2), hidden(0.2)],
    ['a motor', steady(0.3), steady(0.3)],
    ['a hand, and the spring', hand(0.5), fall(0.03)],
    ['a slow hand that is slower in its second half', uneven, uneven],
    ['a flick, and the spring', fall(0.02), fall(0.02)],
    ['a hand, and a spring against a dashpot', hand(0.5), charging(0.1)],
    ['a hand that a sticking throttle lets go', steady(0.1), hand(0.5)],
  ])('%s conforms', (_, up, down) => {
    expect(judge(up, down)).toMatchObject({ outcome: 'conforms', highLimit: 0.5, unit: '1' });
  });

  test('one stroke either way may have come so by chance', () => {
    expect(judge(charging(0.15), charging(0.15), 2)).toMatchObject({
      outcome: 'conforms',
      measured: 0.5,
    });
  });

  test.each([
    ['a charging curve of 20 ms', charging(0.02)],
    ['a charging curve of 0.15 s', charging(0.15)],
    ['edges of 20 ms', steady(0.02)],
    ['edges of 0.1 s', steady(0.1)],
  ])('%s cannot be told from what is no throttle', (_, form) => {
    expect(judge(form)).toMatchObject({ outcome: 'cannot-tell', measured: 1, margin: -0.5 });
  });
});
