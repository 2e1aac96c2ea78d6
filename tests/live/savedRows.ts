import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { SentRow } from './sentRows.js';

/** A row of a saved recording. */
export interface SavedRow {
  readonly time: number;
  readonly counts: number;
  readonly number: number;
}

/** The rows of a saved recording; its last line must be whole. */
export function savedRows(file: string): readonly SavedRow[] {
  const text = readFileSync(file, 'utf8');
  if (text === '') return [];
  expect(text.endsWith('\n')).toBe(true);
  const [heading, ...lines] = text.trimEnd().split('\n');
  expect(heading).toBe('time (s),signal (counts),position');
  return lines.map((line) => {
    const [time, counts, number] = line.split(',').map(Number);
    return { time: time!, counts: counts!, number: number! };
  });
}

/** Every saved row is one that was sent, in the order in which it was sent, at its time from the one before where that was sent right before it. */
export function expectSent(saved: readonly SavedRow[], sent: readonly SentRow[]): void {
  for (const [i, { time, counts, number }] of saved.entries()) {
    const was = sent[number];
    expect(was?.counts, `row ${i} of the file, number ${number}`).toBe(counts);
    const before = saved[i - 1];
    if (!before) continue;
    expect(number).toBeGreaterThan(before.number);
    const step = (was!.stamp - sent[before.number]!.stamp) / 1e6;
    // A restart takes as long as it takes; nothing else changes a step.
    if (step > 0 && number === before.number + 1) expect(time - before.time).toBeCloseTo(step, 8);
    expect(time).toBeGreaterThanOrEqual(before.time);
  }
}
