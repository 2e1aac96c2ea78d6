import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkedLine, headingLine } from './checkedLine.js';
import { programFolder, runTool } from './compileProgram.js';
import { crc16 } from './crc16.js';
import { hasHostCompiler } from './tools.js';

const bytes = (text: string) => new TextEncoder().encode(text);

test('the check of the tests is CRC-16/XMODEM', () => {
  // The published check value of this CRC.
  expect(crc16(bytes('123456789'))).toBe(0x31c3);
});

describe.skipIf(!hasHostCompiler)("code that the controllers share, on this machine's core", () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'truesweep-shared-'));
    const strict = ['-std=gnu99', '-Wall', '-Wextra', '-Werror', `-I${programFolder}`];
    for (const [driver, shared] of [
      ['hostLines', 'line.c'],
      ['hostRing', 'ring.c'],
    ] as const) {
      const source = fileURLToPath(new URL(`${driver}.c`, import.meta.url));
      runTool('cc', [...strict, '-o', join(folder, driver), source, join(programFolder, shared)]);
    }
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const run = (driver: string, input: string, ...args: string[]) =>
    runTool(join(folder, driver), args, bytes(input)).toString();

  test('the check is CRC-16/XMODEM', () => {
    expect(run('hostLines', '', '123456789')).toBe('31C3\n');
  });

  const linesOf = (pairs: readonly (readonly number[])[]) =>
    run('hostLines', pairs.map((pair) => pair.join(' ')).join('\n'));
  const expectedOf = (pairs: readonly (readonly number[])[]) =>
    [headingLine, ...pairs.map((pair) => checkedLine(pair.join(',')))].join('\n').concat('\n');

  test.each([0, 9, 10, 99, 100, 65535])(
    '%d is written right as a stamp and as counts',
    (number) => {
      expect(linesOf([[number, number, number]])).toBe(expectedOf([[number, number, number]]));
    },
  );

  test.each([65536, 999_999_999, 1_000_000_000, 2 ** 32 - 1])(
    '%d is written right as a stamp',
    (number) => {
      expect(linesOf([[number, 0, 65535]])).toBe(expectedOf([[number, 0, 65535]]));
    },
  );

  test('any pairs are written as decimal numbers with the check of the tests', () => {
    const counts = fc.nat(65535);
    const pair = fc.tuple(fc.nat(2 ** 32 - 1), counts, counts);
    fc.assert(
      fc.property(fc.array(pair, { minLength: 200, maxLength: 200 }), (pairs) => {
        expect(linesOf(pairs)).toBe(expectedOf(pairs));
      }),
      { numRuns: 5 },
    );
  });

  test('the ring takes whole lines or nothing, and gives them back in order', () => {
    const step = fc.record({ length: fc.integer({ min: 1, max: 47 }), taken: fc.nat(60) });
    fc.assert(
      fc.property(fc.array(step, { minLength: 300, maxLength: 300 }), (steps) => {
        let [held, expected] = ['', ''];
        steps.forEach(({ length, taken }, line) => {
          const fits = held.length + length <= 128;
          if (fits) held += String.fromCharCode(97 + (line % 26)).repeat(length);
          expected += `${fits ? '+' : '-'}${held.slice(0, taken)}`;
          held = held.slice(taken);
        });
        const input = steps.map(({ length, taken }) => `${length} ${taken}`).join('\n');
        expect(run('hostRing', input)).toBe(expected);
      }),
      { numRuns: 5 },
    );
  });
});
