import { expectation, scoreSweep } from '@truesweep/core';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { replay } from './runCase.js';
import { throughCapacitor } from './throughCapacitor.js';

/** Sound-card inputs from a corner of 16 Hz down to one of a third of a hertz, s. */
const timeConstants = [0.01, 0.03, 0.1, 0.5];

test('through a capacitor nothing passes, no sound sensor fails, and deep dropouts show', () => {
  const seen = { sound: 0, visible: 0, failed: 0 };
  for (let i = 0; i < 40 * soak; i++) {
    const { plan, truth, sweep } = replay(1_006_000 + i);
    const { range: _, ...told } = plan.told;
    const coupled = throughCapacitor(sweep, timeConstants[i % 4]!);
    const expected = expectation(plan.nominal, plan.tolerances);
    const score = scoreSweep(coupled, expected, { ...told, coupling: 'ac' });
    expect(['inconclusive', 'fail']).toContain(score.verdict);
    if (truth.sound) {
      seen.sound += 1;
      expect(score.verdict, `case ${1_006_000 + i}`).toBe('inconclusive');
    } else if (truth.surelyVisible) {
      seen.visible += 1;
      if (score.verdict === 'fail') seen.failed += 1;
    }
  }
  console.log(`through a capacitor: ${JSON.stringify(seen)}`);
  expect(seen.sound).toBeGreaterThan(10);
  expect(seen.failed).toBeGreaterThan(0);
}, 600_000);
