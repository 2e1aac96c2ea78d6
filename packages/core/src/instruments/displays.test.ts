import { describe, expect, test } from 'vitest';
import type { Sweep } from '../capture/sweep.js';
import { digitalDisplay } from './digitalDisplay.js';
import type { DigitalMeter, Logger, NeedleMeter, Oscilloscope } from './instrument.js';
import { integratorRejection } from './integratorRejection.js';
import { needleDisplay } from './needleDisplay.js';
import { moveNeedle } from './needleMovement.js';
import { sampledDisplay } from './sampledDisplay.js';

const meter: DigitalMeter = {
  kind: 'digital-meter',
  name: 'Hand-held meter',
  inputOhms: 10e6,
  ranges: [1.999, 19.99],
  counts: 1999,
  aperture: 0.1,
};

/** A signal at evenly spaced times. */
function signalOf(seconds: number, interval: number, volts: (t: number) => number): Sweep {
  const time = Float64Array.from(
    { length: Math.round(seconds / interval) + 1 },
    (_, i) => i * interval,
  );
  return { time, signal: time.map(volts) };
}

const texts = (...args: Parameters<typeof digitalDisplay>) =>
  digitalDisplay(...args).shown.map(({ text }) => text);

describe('a digital meter', () => {
  test('shows a steady voltage in its counts, over range where none is left', () => {
    expect(
      texts(
        meter,
        signalOf(0.5, 0.01, () => 1.23456),
      ),
    ).toEqual(Array(5).fill('1.235'));
    expect(
      texts(
        meter,
        signalOf(0.3, 0.01, () => -12.3456),
      ),
    ).toEqual(Array(3).fill('-12.35'));
    expect(
      texts(
        { ...meter, heldRange: 1.999 },
        signalOf(0.2, 0.01, () => 2.1),
      ),
    ).toEqual(['OL', 'OL']);
    expect(
      texts(
        meter,
        signalOf(0.2, 0.01, () => 25),
      ),
    ).toEqual(['OL', 'OL']);
  });

  test('shows the mean of a ramp, and of mains what its aperture lets through', () => {
    const { shown } = digitalDisplay(
      { ...meter, heldRange: 19.99, counts: 1e9 },
      signalOf(1, 0.01, (t) => 3 * t),
    );
    for (const { time, volts } of shown) expect(volts).toBeCloseTo(3 * (time - 0.05), 7);
    const wave = signalOf(0.015, 1e-6, (t) => Math.cos(2 * Math.PI * 60 * (t - 0.0075)));
    const fine = { ...meter, aperture: 0.015, counts: 1e9, heldRange: 1.999 };
    const [once] = digitalDisplay(fine, wave).shown;
    expect(once!.volts).toBeCloseTo(integratorRejection(60, 0.015).passed, 6);
  });

  test('its display changes less often than it converts, and its extremes see each conversion', () => {
    const pulse = signalOf(2, 0.001, (t) => (t > 0.305 && t < 0.395 ? 0 : 1));
    const slow = { ...meter, displayInterval: 0.4, keepsExtremes: true };
    expect(texts(slow, pulse)).toEqual(Array(5).fill('1.000'));
    expect(digitalDisplay(slow, pulse).extremes!.low).toBeCloseTo(0.1, 1);
    expect(texts(meter, pulse)[3]).toBe('0.110');
  });

  test('changes its range with a blank, and not to and fro', () => {
    const rising = signalOf(2, 0.001, (t) => (t < 0.505 ? 1.5 : 2.5));
    const blank = { ...meter, rangeChange: { up: 1, down: 0.09, blank: 0.3 } };
    const { shown } = digitalDisplay(blank, rising);
    expect(shown.map(({ text }) => text)).toEqual([
      ...Array(5).fill('1.500'),
      'OL',
      '',
      ...Array(11).fill('2.50'),
    ]);
    expect(shown[7]!.time - shown[6]!.time).toBeCloseTo(0.4, 9);
    // 1.9 V is below the lower range's end, and above what makes the meter go down.
    const falling = signalOf(2, 0.001, (t) => (t < 0.5 ? 2.5 : 1.9));
    expect(texts(meter, falling).at(-1)).toBe('1.90');
  });

  test('a moving input makes gibberish: no number stands twice in a row', () => {
    const sweep = signalOf(4, 0.001, (t) => 2.5 - 2 * Math.cos(2.9 * t));
    const shown = texts({ ...meter, displayInterval: 0.3 }, sweep);
    expect(shown.length).toBeGreaterThan(9);
    expect(shown.every((text, i) => text !== shown[i - 1])).toBe(true);
  });
});

describe('a needle', () => {
  const needle: NeedleMeter = { kind: 'needle-meter', name: 'Needle', ohmsPerVolt: 20e3, range: 5 };
  const movement = { naturalFrequency: 9, damping: 0.4 };

  test('follows as its movement does, however finely the signal is written', () => {
    const sweep = signalOf(2, 0.01, (t) => (t < 0.5 ? 1 : 1 + Math.min(2, 8 * (t - 0.5))));
    const shown = needleDisplay({ ...needle, movement }, sweep);
    let state = { deflection: 1, speed: 0 };
    for (let i = 1; i < shown.length; i++) {
      const [from, to] = [sweep.signal[i - 1]!, sweep.signal[i]!];
      state = moveNeedle(movement, state, [from, to], sweep.time[i]! - sweep.time[i - 1]!);
      expect(shown[i]).toBeCloseTo(state.deflection, 11);
    }
    const fine = signalOf(2, 0.001, (t) => (t < 0.5 ? 1 : 1 + Math.min(2, 8 * (t - 0.5))));
    expect(needleDisplay({ ...needle, movement }, fine).at(-1)).toBeCloseTo(shown.at(-1)!, 9);
  });

  test('rests on its stops and leaves them', () => {
    const sweep = signalOf(6, 0.001, (t) => (t < 1 ? 2 : t < 3 ? 9 : t < 5 ? -9 : 2));
    const shown = needleDisplay({ ...needle, movement }, sweep);
    expect(Math.max(...shown)).toBe(5.25);
    expect(Math.min(...shown)).toBeCloseTo(-0.15, 12);
    expect(shown[2990]).toBe(5.25);
    expect(shown.at(-1)).toBeGreaterThan(1.5);
  });
});

describe('an oscilloscope and a logger', () => {
  const scope: Oscilloscope = {
    kind: 'oscilloscope',
    name: 'Oscilloscope',
    inputOhms: 1e6,
    range: { low: 0, high: 8 },
    bits: 8,
    record: 10,
    memory: 1000,
    fastest: 1e-9,
  };
  const logger: Logger = {
    kind: 'logger',
    name: 'Logger',
    inputOhms: 1e6,
    range: { low: 0, high: 5 },
    bits: 4,
    interval: 0.01,
  };
  // 3 ms open between two samples of a slow record.
  const dropout = signalOf(10, 0.0005, (t) => (t > 4.0025 && t < 4.0055 ? 0 : 2));

  test('a slow record undersamples, and one that keeps peaks does not', () => {
    expect(Math.min(...sampledDisplay(scope, dropout).low)).toBe(2);
    const peaks = sampledDisplay({ ...scope, keepsPeaks: true }, dropout);
    expect(Math.min(...peaks.low)).toBe(0);
    expect(Math.max(...peaks.low)).toBe(2);
    expect(Math.min(...sampledDisplay({ ...scope, memory: 10_000 }, dropout).low)).toBe(0);
  });

  test('steps and range of the converter', () => {
    const ramp = signalOf(1, 0.01, (t) => 20 * t - 5);
    const { low, high } = sampledDisplay(logger, ramp);
    expect(low).toEqual(high);
    expect(Math.min(...low)).toBe(0);
    expect(Math.max(...low)).toBeCloseTo((15 * 5) / 16, 12);
    for (const volts of low)
      expect((volts * 16) / 5 - Math.round((volts * 16) / 5)).toBeCloseTo(0, 9);
  });

  test('a filter rounds as a single pole does', () => {
    const tau = 0.02;
    const filtered = { ...logger, range: { low: -1, high: 9 }, bits: 24, filter: tau };
    const time = Float64Array.of(0, 0.1, 0.1, 0.4);
    const { time: at, low } = sampledDisplay(filtered, {
      time,
      signal: Float64Array.of(0, 0, 4, 4),
    });
    // At the samples of the sweep itself: after 0.3 s.
    expect(low.at(-1)).toBeCloseTo(4 * (1 - Math.exp(-0.3 / tau)), 5);
    expect(at.at(-1)).toBeCloseTo(0.4, 12);
  });
});
