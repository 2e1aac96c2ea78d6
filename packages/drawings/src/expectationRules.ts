import { checkExpectation, type FieldRule } from '@truesweep/core';
import { ruleBy } from './ruleBy.js';

export const curve = ruleBy('it.curve', (value) =>
  checkExpectation({ curve: value }, 'it', ['curve']),
);

export const windows: FieldRule = (value, path) =>
  checkExpectation({ windows: value }, path.replace(/\.windows$/, ''), ['windows']);
