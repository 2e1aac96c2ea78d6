import { adviseInstruments } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { instrumentSentences } from './instrumentSentences.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 1e6 },
};
const meterOnly = (width: number): string =>
  instrumentSentences(
    adviseInstruments(circuit, { travel: 0.3, width, travelTime: 2, passes: 3 }),
  ).meterOnly.join(' ');

describe('what a meter alone is good for', () => {
  test('a wide spot is found by steps that a hand can set', () => {
    expect(meterOnly(0.1)).toContain('Turn by 5\u00a0% of the travel at a time (20 steps)');
    expect(meterOnly(0.1)).not.toContain('no hand');
  });

  test('for a narrow one it says that no hand can, what is not proved, and what proves it', () => {
    const said = meterOnly(0.01);
    expect(said).not.toMatch(/Turn by 500\s*m|Turn by 0\.5/);
    expect(said).toContain('200 steps of 0.5\u00a0% of the travel, which no hand sets');
    expect(said).toContain('Turn by 2.5\u00a0% of the travel at a time (40 steps)');
    expect(said).toContain('a spot narrower than 5\u00a0%');
    expect(said).toMatch(/does not prove that no spot of 1\s% is there.*logger, 1 kHz/);
  });
});
