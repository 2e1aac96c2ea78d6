import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { errorEntries } from './errorEntries.js';
import { errorExamples } from './errorExamples.js';

const sources = ['core', 'explain', 'recordings', 'jobs', 'report', 'cli', 'wording']
  .flatMap((name) =>
    readdirSync(`packages/${name}/src`, { recursive: true, encoding: 'utf8' }).map((file) =>
      join('packages', name, 'src', file),
    ),
  )
  .filter((file) => /\.tsx?$/.test(file) && !/\.test\.|inputErrorCode/.test(file))
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

const codes = Object.keys(errorExamples) as (keyof typeof errorExamples)[];

describe('the list of codes', () => {
  test.each(codes)('%s: its example is refused with it', (code) => {
    const entry = errorEntries().find((one) => one.code === code);
    expect(entry).toBeDefined();
    expect(entry?.sentence).toMatch(/\.$/);
    expect(entry?.path).not.toBe('');
  });

  test('is in the order of its names, one entry each', () => {
    expect(errorEntries().map(({ code }) => code)).toEqual(codes);
  });

  test.each(codes.filter((code) => typeof errorExamples[code] !== 'function'))(
    '%s, of files: what is said is what a source says',
    (code) => {
      const { sentence = '' } = errorEntries().find((one) => one.code === code) ?? {};
      expect(sources).toContain(sentence.split('; ').at(-1));
    },
  );

  test.each(codes)('%s is thrown somewhere', (code) => {
    const parts = code.match(/^no-(\w+)-column$/) ? ['-column'] : [code];
    for (const part of parts) expect(sources).toContain(part);
  });
});
