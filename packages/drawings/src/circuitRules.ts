import {
  type Circuit,
  checkFields,
  checkText,
  type FieldRule,
  type FieldRules,
  operatingPoint,
} from '@truesweep/core';
import { nodeLabels, partLabels } from '@truesweep/wording';
import { number } from './checkProps.js';
import { ruleBy } from './ruleBy.js';

const determined: FieldRule = (value, path) => {
  if (typeof value === 'number') return number(value, path);
  checkFields(value, path, {
    kind: ['floating', 'undetermined', 'unbounded'],
    reason: checkText,
  });
};

/** Parts and nodes that are numbered where a fault makes more than one of them. */
const numbered = /^(track(Cut|Above|Below|Short)|short)\d+$/;

/** Every field of a group whose names are these, or those of numbered parts. */
const eachOf =
  (names: object, rule: FieldRule): FieldRule =>
  (value, path) => {
    const given = typeof value === 'object' && value !== null ? Object.keys(value) : [];
    const known = [...Object.keys(names), ...given.filter((name) => numbered.test(name))];
    checkFields(value, path, Object.fromEntries(known.map((name) => [`${name}?`, rule])));
  };

export const circuit = ruleBy('circuit', (value) => operatingPoint(value as Circuit, 0));

export const point: FieldRules = {
  position: number,
  output: determined,
  sourceState: ['constant-voltage', 'constant-current'],
  nodes: eachOf(nodeLabels, determined),
  parts: eachOf(partLabels, { amps: determined, watts: determined }),
  trackHeat: { above: determined, below: determined },
};
