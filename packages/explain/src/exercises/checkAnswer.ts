import { checkText, InputError, isInputError } from '@truesweep/core';
import { answerWords as words } from '@truesweep/wording/working';
import { writeQuantity } from '../writeQuantity.js';
import { partsOf } from './checkExercise.js';
import type { AnswerValue, ChoicePart, Exercise, ExercisePart, QuantityPart } from './exercise.js';
import { readAnswer } from './readAnswer.js';

/** What came of an answer. */
export type AnswerChecked =
  | {
      readonly result: 'right';
      /** Says so, with the answer. */
      readonly sentence: string;
    }
  | {
      readonly result: 'wrong';
      /** The mistake behind it, as a sentence; left out where it is none of those that are often made. */
      readonly mistake?: string;
      /** The mistake, or where to look. */
      readonly sentence: string;
    }
  | {
      readonly result: 'unreadable';
      /** What can't be read, and what could. */
      readonly sentence: string;
    };

/**
 * Checks an answer to a part of an exercise. Values are read in any spelling and prefix of their unit; without a unit they are not, but where
 * a count is asked (`3`), or a fraction for a percentage (`0.4`).
 *
 * @param exercise From {@link makeExercise}.
 * @param answer What was typed; of a choice the option's `id` or its words.
 * @param part The part's `id`; the first when left out.
 * @returns `unreadable` is no wrong answer: the sentence says how to write it.
 * @throws InputError at `exercise`, `answer` or `part`.
 *
 * @example
 * const exercise = makeExercise('thermistor', 'easy', 4);
 * const [{ value }] = exercise.parts;
 * checkAnswer(exercise, `${(value * 1000).toFixed(0)} mV`).result // => 'right'
 * checkAnswer(exercise, `${value.toFixed(3)}`).result // => 'unreadable'
 * checkAnswer(exercise, '5 volts').mistake // => 'That is what feeds the pull-up; the sensor and the pull-up share it.'
 */
export function checkAnswer(exercise: Exercise, answer: string, part?: string): AnswerChecked {
  checkText(answer, 'answer');
  const asked = partOf(exercise, part);
  return asked.kind === 'choice' ? checkChoice(asked, answer) : checkQuantity(asked, answer);
}

function partOf(exercise: Exercise, id: string | undefined): ExercisePart {
  const parts = partsOf(exercise);
  const found = id === undefined ? parts[0] : parts.find((part) => part.id === id);
  if (found) return found;
  const known = parts.map((part) => part.id).join(', ');
  const wrong = `part is none of the exercise; it must be one of: ${known}.`;
  throw new InputError('unknown-choice', 'part', wrong);
}

function checkQuantity(part: QuantityPart, answer: string): AnswerChecked {
  let value: number;
  try {
    value = readAnswer(answer, part.unit);
  } catch (error) {
    if (!isInputError(error)) throw error;
    return { result: 'unreadable', sentence: error.message };
  }
  const isMeant = (one: AnswerValue) => Math.abs(value - one.value) <= one.tolerance;
  if (isMeant(part))
    return right(writeQuantity(part, part.unit === '1' ? 3 : 4, part.unit === '1'));
  return wrong(part.wrong.find(isMeant)?.mistake);
}

function checkChoice(part: ChoicePart, answer: string): AnswerChecked {
  const plain = (text: string) =>
    text
      .trim()
      .replace(/[\s\p{Zs}]+/gu, ' ')
      .toLowerCase();
  const chosen = part.options.find(({ id, text }) => [id, text].map(plain).includes(plain(answer)));
  if (!chosen) {
    const options = part.options.map(({ text }) => text);
    return { result: 'unreadable', sentence: words.noOption(answer, options) };
  }
  if (chosen.id === part.right) return right(chosen.text);
  return wrong(part.wrong.find(({ option }) => option === chosen.id)?.mistake);
}

const right = (answer: string): AnswerChecked => ({
  result: 'right',
  sentence: words.right(answer),
});

function wrong(mistake: string | undefined): AnswerChecked {
  if (mistake === undefined) return { result: 'wrong', sentence: words.wrong };
  return { result: 'wrong', mistake, sentence: mistake };
}
