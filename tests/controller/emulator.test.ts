import { describe, expect, test } from 'vitest';
import { checkedLine, headingLine } from './checkedLine.js';
import { emulate, firstSampleAt, whyNoEmulation } from './emulator.js';

interface Line {
  readonly stamp: number;
  readonly signal: number;
  readonly supply: number;
}

/** The lines of a serial line's bytes; the last may not be whole, since time ended there. */
function textLines(bytes: Uint8Array): string[] {
  return new TextDecoder().decode(bytes).split('\n').slice(0, -1);
}

function pairsOf(lines: readonly string[]): Line[] {
  return lines
    .filter((line) => line !== headingLine)
    .map((line) => {
      const [text] = line.split('*');
      const [stamp, signal, supply, ...more] = text!.split(',').map(Number);
      expect(more).toEqual([]);
      return { stamp: stamp!, signal: signal!, supply: supply! };
    });
}

function expectWhole(lines: readonly string[]) {
  expect(lines.filter((line) => line !== checkedLine(line.split('*')[0]!))).toEqual([]);
}

/** Counts of ten bits with the controller's supply of 5 V as reference. */
const countsOf = (volts: number) => Math.min(1023, Math.floor((volts / 5) * 1024));

const smooth = (part: number) => (1 - Math.cos(Math.PI * Math.min(1, Math.max(0, part)))) / 2;

/** A throttle that is opened slowly, held, and snaps shut, V. */
const throttleVolts = (t: number) =>
  0.45 + 3.3 * (smooth((t - 0.3) / 1.2) - smooth((t - 1.9) / 0.06));

describe.skipIf(whyNoEmulation() !== undefined)('the 8-bit program in an emulator', () => {
  test('tells a throttle as it moves, each pair once, 1000 µs apart', async () => {
    const lines = textLines(
      await emulate({ seconds: 2.5, signalVolts: throttleVolts, supplyVolts: 4.17 }),
    );
    expectWhole(lines);
    const pairs = pairsOf(lines);
    expect(pairs.length).toBeGreaterThan(2490);
    expect(pairs.map(({ stamp }) => stamp)).toEqual(pairs.map((_, i) => 1000 * i));
    const errors = pairs.map(({ stamp, signal, supply }) =>
      Math.max(
        Math.abs(signal - countsOf(throttleVolts(firstSampleAt + stamp / 1e6))),
        Math.abs(supply - countsOf(4.17)),
      ),
    );
    expect(Math.max(...errors)).toBeLessThanOrEqual(1);
  });

  test('begins with the heading and repeats it every 1000 pairs', async () => {
    const lines = textLines(await emulate({ seconds: 3.1, signalVolts: () => 1, supplyVolts: 5 }));
    const places = lines.flatMap((line, place) => (line === headingLine ? [place] : []));
    expect(places).toEqual([0, 1001, 2002, 3003]);
    expect(pairsOf(lines).every(({ supply }) => supply === 1023)).toBe(true);
  });

  test('takes each sample at its stamp: on slopes of 3.5 µs a count none is off by more than one', async () => {
    // Up and down in 7.1 ms, which no whole number of pairs lasts: every moment of it is met.
    const slopeVolts = (t: number) => 4.9 * Math.abs(((t / 0.0071) % 1) * 2 - 1);
    const lines = textLines(
      await emulate({ seconds: 1.5, signalVolts: slopeVolts, supplyVolts: 5 }),
    );
    expectWhole(lines);
    const pairs = pairsOf(lines);
    const errors = pairs.map(
      ({ stamp, signal }) => signal - countsOf(slopeVolts(firstSampleAt + stamp / 1e6)),
    );
    const [least, most] = [Math.min(...errors), Math.max(...errors)];
    console.log(`samples of the slopes: off by ${least} to ${most} counts of 3.5 µs`);
    expect(pairs.length).toBeGreaterThan(1490);
    expect(least).toBeGreaterThanOrEqual(-1);
    expect(most).toBeLessThanOrEqual(1);
  });

  test('goes on at 0 when its stamp wraps', async () => {
    const firstStamp = 2 ** 32 - 2500;
    const lines = textLines(
      await emulate({ seconds: 0.02, signalVolts: () => 2, supplyVolts: 5, firstStamp }),
    );
    expectWhole(lines);
    const stamps = pairsOf(lines).map(({ stamp }) => stamp);
    expect(stamps.slice(0, 6)).toEqual([
      4_294_964_796, 4_294_965_796, 4_294_966_796, 500, 1500, 2500,
    ]);
  });

  test('drops whole lines where the serial line is too slow for them', async () => {
    const lines = textLines(
      await emulate({ seconds: 1.5, signalVolts: () => 2, supplyVolts: 5, baud: 125_000 }),
    );
    expectWhole(lines);
    const stamps = pairsOf(lines).map(({ stamp }) => stamp);
    const steps = stamps.slice(1).map((stamp, i) => stamp - stamps[i]!);
    expect(steps.every((step) => step > 0 && step % 1000 === 0)).toBe(true);
    expect(steps.some((step) => step > 1000)).toBe(true);
    expect(stamps.length).toBeGreaterThan(500);
  });
});
