import { defaultCriteria } from '@truesweep/core';
import { expect, test } from 'vitest';
import { type PublicField, publicFields } from './publicFields.js';

const fields = publicFields();
const named = ({ file, name }: PublicField) => `${file} ${name}`;

/** Types that name their unit. */
const unitTypes =
  /\b(Volts|Ohms|Amps|Watts|Seconds|Farads|Hertz|Celsius|Kelvins|Pascals|Metres|Degrees|Travel|Position|Fraction|Unit)\b/;
/** A unit, or what is counted. */
const unitWords =
  /(?<![\w-])(V|mV|V\/s|H|J|K|Pa|m|rad\/s|Ω|A|W|s|ms|F|Hz|°C|°|%|nats|per second|bits?|bytes?|counts?|counted|digits?|samples?|passes|steps?|rows?|times|how many|number|lines?|columns?|channel|places?|readings?|fraction|ratio|unit|seconds|px|hours?|looks?|returns?)(?![\w-])/i;
/** What may be given. */
const rangeWords =
  /\b(from|to|above|below|at least|at most|more|less|any|whole|finite|positive|between|within|never|up to|after|before|0|1)\b/i;
/** What it means to leave it out. */
const defaultWords =
  /\b(default|left out|absent|without|where|only|if|unless|none|not|no|else|otherwise|missing|for)\b/i;

test('there are as many public fields as there are', () => {
  // Guards the walk: a change of it that loses types would let everything else pass.
  expect(fields.length).toBeGreaterThan(900);
  expect(fields.filter(({ isInput }) => isInput).length).toBeGreaterThan(300);
});

test('every public field has a doc comment', () => {
  const bare = fields.filter(({ comment, isTag }) => !isTag && comment.trim() === '');
  expect(bare.map(named)).toEqual([]);
});

test('every number says its unit, in its type or in its comment', () => {
  const unitless = fields.filter(
    ({ isNumber, type, comment }) => isNumber && !unitTypes.test(type) && !unitWords.test(comment),
  );
  expect(unitless.map(named)).toEqual([]);
});

test('every number that a function takes says its range', () => {
  const boundless = fields.filter(
    ({ isNumber, isInput, comment }) => isNumber && isInput && !rangeWords.test(comment),
  );
  expect(boundless.map(named)).toEqual([]);
});

test('every field that can be left out says what that means', () => {
  const unexplained = fields.filter(
    ({ isOptional, comment }) => isOptional && !defaultWords.test(comment),
  );
  expect(unexplained.map(named)).toEqual([]);
});

test('the comment of each criterion tells its default, and it is that', () => {
  for (const [key, value] of Object.entries(defaultCriteria)) {
    const field = fields.find(({ name }) => name === `Criteria.${key}`);
    const told = /Default: (?:`(\w+)`|(-?\d+(?:\.\d+)?)( %)?)/.exec(field?.comment ?? '');
    expect(told, `Criteria.${key} tells its default`).not.toBeNull();
    const [, word, number, percent] = told!;
    const expected = word ?? Number(number) / (percent ? 100 : 1);
    expect(expected, `Criteria.${key}`).toBe(value);
  }
});
