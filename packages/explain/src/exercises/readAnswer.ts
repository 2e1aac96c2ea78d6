import { InputError, parseMeasure, parseQuantity } from '@truesweep/core';
import { answerWords as words } from '@truesweep/wording/working';
import type { AnswerUnit } from './exercise.js';

/** A number by itself, or with a prefix that has no unit behind it. */
const bareNumber = /^[+\-−]?[\d .,\t\p{Zs}]*\d(?:[eE][+\-−]?\d+)?\s*(?:[pnu]|[µmk]|[KMG]|T)?$/u;
/** What is counted may stand behind a count. */
const counted = /\s*(?:passes|pass|times|departures|departure)$/i;

/**
 * Reads an answer as people write it: the value in the unit asked for. A bare number is read where a count is asked, and as a fraction where
 * a percentage is; otherwise its unit is asked for.
 *
 * @throws InputError that says what can't be read, and what could.
 */
export function readAnswer(text: string, unit: AnswerUnit): number {
  const answer = text.trim();
  const isBare = bareNumber.test(answer);
  if (unit === '1') return readCount(answer.replace(counted, ''));
  if (unit === '°C') return parseMeasure(answer, 'temperature', 'answer');
  if (unit === '%') return isBare ? readFraction(answer) : parseQuantity(answer, unit, 'answer');
  // “2k2” and “2.2k” are how the trade writes ohms.
  if (isBare && !(unit === 'Ω' && /\D$/.test(answer)))
    throw new InputError('no-unit', 'answer', words.noUnit(answer, words.examples[unit]));
  return parseQuantity(answer, unit, 'answer');
}

function readFraction(answer: string): number {
  const fraction = readPlain(answer);
  if (fraction >= 0 && fraction <= 1) return fraction;
  throw new InputError('no-unit', 'answer', words.noPercent(answer));
}

function readCount(answer: string): number {
  if (bareNumber.test(answer)) return readPlain(answer);
  throw new InputError('not-a-number', 'answer', words.noCount(answer));
}

/** Any unit that takes bare numbers reads them. */
const readPlain = (answer: string): number => parseQuantity(answer, 'V', 'answer');
