import { checkFields, checkReadable, checkText, type FieldRules, listOf } from '@truesweep/core';
import { someNumber } from '../someNumber.js';
import type { Exercise, ExercisePart } from './exercise.js';

// One table each: tables are taken apart once. The marks let go of them in a page that asks nothing.
const choiceRules: FieldRules = {
  id: checkText,
  kind: ['choice'],
  asks: checkText,
  options: /* @__PURE__ */ listOf({ id: checkText, text: checkText }, 1),
  right: checkText,
  wrong: /* @__PURE__ */ listOf({ option: checkText, mistake: checkText }),
};

const quantityRules: FieldRules = {
  id: checkText,
  kind: ['quantity', 'choice'],
  asks: checkText,
  unit: ['V', 'Ω', '%', '°C', '1'],
  value: someNumber,
  tolerance: someNumber,
  wrong: /* @__PURE__ */ listOf({ value: someNumber, tolerance: someNumber, mistake: checkText }),
};

const exerciseRules: FieldRules = {
  topic: shown,
  level: shown,
  seed: shown,
  question: shown,
  hint: shown,
  parts: /* @__PURE__ */ listOf(somePart, 1),
  working: shown,
  'sweep?': shown,
  'circuit?': shown,
};

/** The parts of what must be an exercise; refuses what is none. */
export function partsOf(exercise: Exercise): readonly ExercisePart[] {
  checkFields(exercise, 'exercise', exerciseRules);
  return exercise.parts;
}

/** What is shown and not looked at here. */
function shown(): void {}

function somePart(part: unknown, path: string): void {
  checkReadable(part, path);
  const { kind } = (part ?? {}) as Partial<ExercisePart>;
  checkFields(part, path, kind === 'choice' ? choiceRules : quantityRules);
}
