import { InputError } from '@truesweep/core';
import { expect, test } from 'vitest';
import { textAnswers } from './textAnswers.js';

/** How long so many recordings that can't be judged take, ms. */
function timeOf(count: number): number {
  const writer = textAnswers({ print: () => {}, width: 80, colour: false }, { short: true });
  const refusal = new InputError('missing-file', 'a.csv', 'There is no such file.');
  const begun = performance.now();
  for (let i = 0; i < count; i++) writer.write({ file: 'a.csv', refusal });
  writer.end();
  return performance.now() - begun;
}

// As often again as there are more of them is 10; where each looked at all before it it would be 100.
test('ten times as many recordings that are refused take some ten times as long', () => {
  timeOf(3000);
  expect(timeOf(30_000)).toBeLessThan(40 * Math.max(1, timeOf(3000)));
});
