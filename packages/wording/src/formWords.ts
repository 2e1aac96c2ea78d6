import { texts } from './rules.js';
import { say } from './say.js';

/**
 * Words of every form.
 *
 * @example
 * formWords.again // => 'Start again'
 */
export const formWords = {
  link: 'Link with these entries',
  again: 'Start again',
  others: 'The other values',
  closer: 'Look closer',
  fromShelf: 'Take the parts from the shelf',
  sheet: 'Read at the bench',
  place: 'What',
  expected: 'Expected',
  read: 'Read',
  sheetNotes: 'Machine, sensor, date, read by:',
  newerVersion: 'A newer version of these pages is here.',
  changeVersion: 'Change to it; what you entered stays',
  changeVersionHolding: 'Change to it; what you entered stays, recordings must be chosen again',
  changedElsewhere:
    'These pages were changed to a newer version in another tab. Keep your report first, then load this page anew.',
  loadAnew: 'Load this page anew',
  newerLink: 'This link was made by a newer version of this page; nothing of it was read.',
} as const satisfies Record<string, string>;

/**
 * What stands in place of the answer while an entry can't be used.
 *
 * @example
 * mendEntriesSentence(['Track resistance']) // => 'No answer yet. Look at: Track resistance.'
 */
export function mendEntriesSentence(labels: readonly string[]): string {
  texts(labels, 'labels');
  return say`No answer yet. Look at: ${labels.join(', ')}.`;
}

/**
 * What stands in place of the answer where entries that are each possible make no circuit together.
 *
 * @example
 * noAnswerSentence('The stops are the same.') // => 'No answer: these entries do not go together. The stops are the same.'
 */
export function noAnswerSentence(why: string): string {
  return say`No answer: these entries do not go together. ${why}`;
}

/**
 * Which readings an answer has from the example that stands in a form first.
 *
 * @example
 * exampleSentence(['Closed reading now']) // => 'Still as in the example: Closed reading now. Enter your own.'
 */
export function exampleSentence(labels: readonly string[]): string {
  texts(labels, 'labels');
  return say`Still as in the example: ${labels.join('; ')}. Enter your own.`;
}

/**
 * Said of a choice that is none of those offered, as an old link may hold.
 *
 * @example
 * notChoiceSentence('x', ['direct (DC)']) // => '“x” can’t be chosen here; choose one of: direct (DC).'
 */
export function notChoiceSentence(text: string, choices: readonly string[]): string {
  texts(choices, 'choices');
  return say`“${text}” can’t be chosen here; choose one of: ${choices.join(', ')}.`;
}

/**
 * The bounds of an entry.
 *
 * @example
 * boundsWords('0 Ω', '1 MΩ') // => '0 Ω to 1 MΩ'
 */
export function boundsWords(low: string, high: string): string {
  return say`${low} to ${high}`;
}

/**
 * The refusal of an entry outside its bounds.
 *
 * @example
 * outOfBoundsSentence('70 V', '100 mV', '60 V') // => '“70 V” is outside what can be entered here; write 100 mV to 60 V.'
 */
export function outOfBoundsSentence(text: string, low: string, high: string): string {
  return say`“${text}” is outside what can be entered here; write ${boundsWords(low, high)}.`;
}

/** So many names are listed, and no name longer; the others are counted. */
const mostNames = 5;
const longestName = 30;

/**
 * What of a link was not read.
 *
 * @example
 * unknownEntriesSentence(['sise']) // => 'The link names what this page does not know: sise. The rest of it was read.'
 */
export function unknownEntriesSentence(names: readonly string[]): string {
  texts(names, 'names');
  const listed = names
    .slice(0, mostNames)
    .map((name) => (name.length > longestName ? say`${name.slice(0, longestName)}…` : name));
  const more = names.length - listed.length;
  const all = say`${listed.join(', ')}${more > 0 ? say` and ${more} more` : ''}`;
  return say`The link names what this page does not know: ${all}. The rest of it was read.`;
}
