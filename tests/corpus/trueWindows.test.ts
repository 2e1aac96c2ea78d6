import { expectation } from '@truesweep/core';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { drawHookup } from './cases/drawHookup.js';
import { randomStream } from './simulator/randomStream.js';
import { trueWindows } from './trueWindows.js';

test('the windows of the truth, by a divider of its own, are those of the expectation', () => {
  const random = randomStream(83);
  for (let i = 0; i < 25 * soak; i++) {
    const { nominal, tolerances } = drawHookup(random);
    const { windows } = expectation(nominal, tolerances);
    const own = trueWindows(nominal, tolerances);
    const span = Math.abs(windows.open.nominal - windows.closed.nominal);
    for (const end of ['closed', 'open'] as const)
      for (const edge of ['low', 'nominal', 'high'] as const)
        expect(Math.abs(own[end][edge] - windows[end][edge]) / span).toBeLessThan(2e-4);
  }
});
