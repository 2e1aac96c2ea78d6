import { InputError } from '@truesweep/core';
import { answersEndedSentence, jobEntries, jobQuestion } from '@truesweep/wording';
import { errorLine } from './errorLine.js';
import { flagOf, type JobField, jobFields } from './jobFields.js';
import { type JobEntries, wrongEntry } from './jobOfEntries.js';
import { refusalOf } from './refusalOf.js';
import type { Output, Questions } from './terminal.js';

/**
 * Asks for the fields that were not told, one after the other; what is wrong is said and asked again.
 *
 * @throws InputError where the answers end before all that is needed was told.
 */
export async function askForJob(
  told: JobEntries,
  questions: Questions,
  output: Output,
): Promise<JobEntries> {
  let entries = told;
  try {
    for (const field of jobFields) {
      if (entries[field.name] !== undefined) continue;
      const answer = await answerTo(field, entries, questions, output);
      if (answer !== undefined) entries = { ...entries, [field.name]: answer };
    }
  } finally {
    questions.end();
  }
  return entries;
}

/** A right answer; undefined where the field was left out. */
async function answerTo(
  field: JobField,
  entries: JobEntries,
  questions: Questions,
  output: Output,
): Promise<string | undefined> {
  const words = jobEntries[field.name];
  for (;;) {
    const answer = await questions.ask(jobQuestion(words, field.isNeeded));
    if (answer === undefined) {
      throw new InputError('missing', flagOf(field), answersEndedSentence(words.label));
    }
    if (answer.trim() === '' && !field.isNeeded) return undefined;
    const wrong = wrongEntry(field, answer.trim(), entries);
    if (!wrong) return answer.trim();
    output.printError(errorLine(refusalOf(wrong)));
  }
}
