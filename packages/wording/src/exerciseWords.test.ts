import { describe, expect, test } from 'vitest';
import * as working from './working.js';

const topics = Object.entries(working).filter(([name]) => name.endsWith('ExerciseWords'));

test('there are words for exercises', () => {
  expect(topics.length).toBeGreaterThanOrEqual(7);
});

describe.each(topics)('%s', (_, words) => {
  const said: Readonly<Record<string, unknown>> = words;

  test('a mistake is told in sentences, each its own', () => {
    const mistakes = Object.values(said.mistakes as Readonly<Record<string, string>>);
    expect(mistakes.length).toBeGreaterThan(0);
    for (const mistake of mistakes) expect(mistake).toMatch(/^[A-Z][^|]{20,}\.$/);
    expect(new Set(mistakes).size).toBe(mistakes.length);
  });

  test('what is asked is a question, a hint a sentence', () => {
    const of = (start: RegExp) =>
      Object.entries(said).flatMap(([key, text]) =>
        start.test(key) && typeof text === 'string' ? [text] : [],
      );
    expect(of(/^hint/).length).toBeGreaterThan(0);
    for (const text of of(/^hint/)) expect(text).toMatch(/^[A-Z].*\.$/);
    for (const text of of(/^asks/)) expect(text).toMatch(/^[A-Z].*\?( .*\.)?$/);
  });
});
