import { describe, expect, test } from 'vitest';
import type { Check, Finding } from './score.js';
import { troubleCodes } from './troubleCodes.js';

const finding = (kind: Finding['kind'], depth: number): Finding => ({
  kind,
  depth,
  start: 0,
  end: 1,
  travel: 0.1,
  depthOfSpan: 0.1,
  depthOfSource: 0.1,
  went: 'elsewhere',
  during: 'opening',
});
const codes = (findings: readonly Finding[], checks: readonly Check[] = [], sensor?: 'A' | 'B') =>
  troubleCodes({ findings, checks }, sensor).map(({ code }) => code);

describe('troubleCodes', () => {
  test('nothing wrong sets none, nor do foreign pulses', () => {
    expect(codes([])).toEqual([]);
    expect(codes([finding('spike', 0.5)])).toEqual([]);
  });

  test('dropouts come and go, low or high; jumps do not fit the other readings', () => {
    expect(codes([finding('dropout', -1)])).toEqual(['P0122', 'P0124']);
    expect(codes([finding('dropout', 1)], [], 'B')).toEqual(['P0223', 'P0224']);
    expect(codes([finding('step', 0.2), finding('rough', 0.2)])).toEqual(['P0121']);
  });

  test('an end outside its window is low or high', () => {
    const end = {
      check: 'closed-end',
      unit: 'V',
      lowLimit: 0.4,
      highLimit: 0.6,
      limitFrom: 'expected-window',
    } as const;
    expect(codes([], [{ ...end, outcome: 'fails', measured: 0.1 }])).toEqual(['P0122']);
    expect(codes([], [{ ...end, outcome: 'marginal', measured: 0.65 }])).toEqual(['P0123']);
    expect(codes([], [{ ...end, outcome: 'conforms', measured: 0.5 }])).toEqual([]);
  });
});
