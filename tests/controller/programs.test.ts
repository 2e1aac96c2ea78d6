import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkedLine, headingLine } from './checkedLine.js';
import { compileProgram, programFolder, runTool } from './compileProgram.js';
import { controllerTools } from './tools.js';

const page = fileURLToPath(
  new URL('../../site/src/content/docs/how-to/hook-up-a-microcontroller.mdx', import.meta.url),
);
const readme = readFileSync(join(programFolder, 'README.md'), 'utf8');

test.each([
  ['README', readme],
  ['page', readFileSync(page, 'utf8')],
])('the %s shows lines whose checks are right', (_, text) => {
  const lines = text.split('\n').filter((line) => /\*[0-9A-F]{4}$/.test(line));
  expect(lines[0]).toBe(headingLine);
  expect(lines.length).toBeGreaterThan(1);
  expect(lines).toEqual(lines.map((line) => checkedLine(line.split('*')[0]!)));
});

/** The most that a program may take, bytes, as its README says. */
function boundsOf(core: string): { flash: number; memory: number } {
  const row = new RegExp(`^\\| \`${core}\\.c\`.*\\| at most (\\d+) \\| at most (\\d+) \\|$`, 'm');
  const [, flash, memory] = row.exec(readme)!;
  return { flash: Number(flash), memory: Number(memory) };
}

describe.skipIf('why' in controllerTools())("the controllers' programs", () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'truesweep-programs-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test.each([
    ['core8', 'avr-size'],
    ['core32', 'arm-none-eabi-size'],
  ])('%s compiles without a warning into the size that its README says', (core, size) => {
    const printed = runTool(size, [compileProgram(`${core}.elf`, folder)]).toString();
    const [code, data, zeros] = printed.split('\n')[1]!.trim().split(/\s+/).map(Number);
    const bounds = boundsOf(core);
    const [flash, memory] = [code! + data!, data! + zeros!];
    console.log(`${core}: ${flash} bytes of flash, ${memory} bytes of memory without the stack`);
    expect(flash).toBeLessThanOrEqual(bounds.flash);
    expect(memory).toBeLessThanOrEqual(bounds.memory);
    expect(code).toBeGreaterThan(500);
  });

  test('the 8-bit program divides nowhere', () => {
    const names = runTool('avr-nm', [compileProgram('core8.elf', folder)]).toString();
    expect(names).toContain('write_pair');
    expect(names).not.toMatch(/div|mod/);
  });

  test('the 32-bit program begins with its vectors: stack, reset, faults, converter, serial port', () => {
    const image = readFileSync(compileProgram('core32.bin', folder));
    const vector = (place: number) => image.readUInt32LE(4 * place);
    expect(vector(0)).toBe(0x2000_0000 + 20 * 1024);
    for (const place of [1, 2, 3, 4, 5, 6, 16 + 18, 16 + 37]) {
      // Odd, as a call on this core is, and behind the table.
      expect(vector(place) % 2, `vector ${place}`).toBe(1);
      expect(vector(place), `vector ${place}`).toBeGreaterThan(0x0800_0000 + 4 * (16 + 37));
      expect(vector(place), `vector ${place}`).toBeLessThan(0x0800_0000 + image.length);
    }
  });
});
