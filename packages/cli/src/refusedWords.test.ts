import { expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';

const said = (...args: string[]) => runTruesweep(args);

test.each<[words: string[], path: string, said: RegExp, code: string]>([
  [
    ['report', 'a.csv'],
    '--job',
    /report needs --job <file> \(.*\) and --out <file> \(.*\)/,
    'missing',
  ],
  [
    ['set-closed'],
    '--reading',
    /--reading <voltage> .*--wanted <voltage> .*--turned <degrees> .*--then <voltage>/,
    'missing',
  ],
  [['compare', 'a.csv'], '--job', /compare needs .*--job <file>.*<after>/, 'missing'],
  [['compare', 'a.csv', '--job', 'b.json'], 'after', /<after> \(the later recording\)/, 'missing'],
  [['score', '--job'], '--job', /--job needs a <file>/, 'missing'],
  [['score', '--job', 'a.json', '--shrt'], '--shrt', /may be meant to be --short/, 'unknown-name'],
  [['score', '--job', 'a.json', '--zzzzzz'], '--zzzzzz', /score has --job, /, 'unknown-name'],
  [['scor', 'a.csv'], 'scor', /may be meant to be score/, 'unknown-name'],
  [['qqqqqqqq'], 'qqqqqqqq', /the commands are write-job, terminals, /, 'unknown-name'],
  [['expect', 'a.csv', '--job', 'b.json'], 'a.csv', /expect takes no/, 'unexpected'],
  [
    ['score', '--json', '--json-lines', '--job', 'a.json'],
    '--json-lines',
    /--json-lines and --json can't be given together/,
    'unexpected',
  ],
])('%j is refused as every input is', async (words, path, wrong, code) => {
  const { code: left, out, err } = await said(...words);
  expect({ left, out }).toEqual({ left: 2, out: '' });
  expect(err).toMatch(wrong);
  expect(err.startsWith(`truesweep: ${path}: `), err).toBe(true);
  expect(err).toMatch(new RegExp(`\\. \\(${code}\\)\\n$`));
  expect(err).not.toContain('error:');
});
