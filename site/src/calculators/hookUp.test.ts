import { expect, test } from 'vitest';
import { boundsOf, entries, entryNames, initialTexts, readHookUp } from './hookUp.js';

test('what stands in the form first is a hook-up', () => {
  expect(readHookUp(initialTexts)).toMatchObject({
    circuit: {
      source: { volts: 5 },
      limiter: 1000,
      sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
      load: { pullDown: 10e6 },
    },
    tolerances: { track: 0.2, closedPosition: 0.02 },
  });
});

test('every entry has its place in the form', () => {
  expect([...entryNames].sort()).toEqual(Object.keys(entries).sort());
});

test('each wrong entry has its own refusal', () => {
  const read = readHookUp({ ...initialTexts, track: '1,500', source: '70 V', input: '' });
  expect(read).toEqual({
    refusals: {
      track: expect.stringContaining('1.500'),
      source: expect.stringContaining('write 100\u00a0mV to 60\u00a0V'),
      input: expect.stringContaining('such as'),
    },
  });
});

test('both bounds of every entry are taken, and what lies beyond them is not', () => {
  for (const name of entryNames) {
    const [low, high] = boundsOf(name);
    for (const text of [low, high])
      expect(readHookUp({ ...initialTexts, [name]: text }), name).not.toHaveProperty('refusals');
    for (const text of [`-${high}`, `1${high.replace('.', '')}`])
      expect(readHookUp({ ...initialTexts, [name]: text }), name).toHaveProperty('refusals');
  }
});

test('a pull-up is there when it is entered', () => {
  const without = readHookUp(initialTexts);
  const withPullUp = readHookUp({ ...initialTexts, pullUp: '47k', pullUpVolts: '3V3' });
  expect(without).not.toHaveProperty('circuit.load.pullUp');
  expect(withPullUp).toHaveProperty('circuit.load.pullUp', { ohms: 47e3, volts: 3.3 });
});
