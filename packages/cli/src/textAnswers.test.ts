import { InputError } from '@truesweep/core';
import { expect, test } from 'vitest';
import { layOut } from './layOut.js';
import { printUnjudged } from './printUnjudged.js';
import { textAnswers } from './textAnswers.js';
import { unjudgedFile } from './unjudgedFile.js';

const terminal = { print: () => {}, width: 80, colour: false };
const refused = {
  file: 'a.csv',
  refusal: new InputError('missing-file', 'a.csv', 'There is no such file.'),
};
const count = 30_000;

function timeOf(work: () => void): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}

// Were each to look at all before it, they would take more than a hundred times as long.
test('many recordings that are refused wait in no more than five times what printing them takes', () => {
  const printed = timeOf(() => {
    for (let i = 0; i < count; i++) layOut(printUnjudged(unjudgedFile(refused)), terminal);
  });
  const waited = timeOf(() => {
    const writer = textAnswers(terminal, { short: true });
    for (let i = 0; i < count; i++) writer.write(refused);
    writer.end();
  });
  expect(waited).toBeLessThan(5 * printed);
});
