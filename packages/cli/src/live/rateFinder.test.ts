import { expect, test } from 'vitest';
import { rateFinder } from './rateFinder.js';

const text = (lines: string) => new TextEncoder().encode(lines);
const rows = text(Array.from({ length: 40 }, (_, i) => `${i};512\n`).join(''));

test('lines of numbers are right, in whatever pieces they come', () => {
  const tell = rateFinder({}, 0);
  const verdicts = Array.from({ length: 10 }, (_, i) =>
    tell(rows.subarray(24 * i, 24 * i + 24), 0.1),
  );
  expect(verdicts[0]).toBe('waiting');
  expect(verdicts).toContain('right');
  expect(verdicts).not.toContain('wrong');
});

test('what is no text is wrong at once', () => {
  const noise = Uint8Array.from({ length: 64 }, (_, i) => (i * 7919) % 256);
  expect(rateFinder({}, 0)(noise, 0.01)).toBe('wrong');
});

test('text without numbers, and silence, are wrong after a while', () => {
  const tell = rateFinder({}, 5);
  expect(tell(text('hello\n'.repeat(40)), 6)).toBe('waiting');
  expect(tell(text(''), 6.9)).toBe('waiting');
  expect(tell(text(''), 7.1)).toBe('wrong');
});
