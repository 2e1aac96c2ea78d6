import { describe, expect, test } from 'vitest';
import { criteriaBounds, defaultCriteria, wholeCriteria } from './criteria.js';

const names = Object.keys(criteriaBounds) as (keyof typeof criteriaBounds)[];

test.each(names)('%s has a default within its bounds, which are taken themselves', (name) => {
  const [low, high] = criteriaBounds[name];
  expect(defaultCriteria[name]).toBeGreaterThanOrEqual(low);
  expect(defaultCriteria[name]).toBeLessThanOrEqual(high);
  const beside = name === 'closedMarginal' ? { closedNormal: 0 } : {};
  const most = name === 'closedNormal' ? { closedMarginal: high } : {};
  expect(wholeCriteria({ ...beside, [name]: low })[name]).toBe(low);
  expect(wholeCriteria({ ...most, [name]: high })[name]).toBe(high);
});

describe('a part of the criteria', () => {
  test('is taken, the rest from the defaults', () => {
    expect(wholeCriteria({ dropout: 0.02 })).toEqual({ ...defaultCriteria, dropout: 0.02 });
    expect(wholeCriteria({})).toEqual(defaultCriteria);
  });

  test('may leave a limit undefined', () => {
    expect(wholeCriteria({ sameTravel: undefined } as never)).toEqual(defaultCriteria);
  });
});

test.each([
  [{ sameTravel: Number.NaN }, 'not-finite', 'criteria.sameTravel'],
  [{ sameTravel: -1 }, 'out-of-range', 'criteria.sameTravel'],
  [{ sameTravel: 3 }, 'out-of-range', 'criteria.sameTravel'],
  [{ visibleSpan: Number.NaN }, 'not-finite', 'criteria.visibleSpan'],
  [{ visibleSpan: 1.5 }, 'out-of-range', 'criteria.visibleSpan'],
  [{ deepDeparture: 10 }, 'out-of-range', 'criteria.deepDeparture'],
  [{ dropout: 15 }, 'out-of-range', 'criteria.dropout'],
  [{ looks: 1.5 }, 'not-whole', 'criteria.looks'],
  [{ endAcceptance: 'strict' }, 'unknown-choice', 'criteria.endAcceptance'],
  [{ version: 2 }, 'not-a-version', 'criteria.version'],
  [{ visibelSpan: 0.02 }, 'unknown-field', 'criteria.visibelSpan'],
  [{ closedNormal: 0.1 }, 'out-of-order', 'criteria.closedMarginal'],
  [null, 'missing', 'criteria'],
  [[], 'not-a-group', 'criteria'],
])('%j is refused: %s at %s', (criteria, code, path) => {
  expect(() => wholeCriteria(criteria as never)).toThrow(
    expect.objectContaining({ name: 'InputError', code, path }),
  );
});
