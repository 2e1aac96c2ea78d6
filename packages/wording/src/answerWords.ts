import { say } from './say.js';
import { visibleText } from './visibleText.js';
import { whole } from './whole.js';

const quoted = (text: string): string => {
  const shown = visibleText(text);
  return `“${shown.length > 40 ? `${shown.slice(0, 39)}…` : shown}”`;
};

/** What is said of an answer to an exercise. */
export const answerWords = {
  right: (answer: string): string => say`Right: ${answer}.`,
  wrong: 'That is not it yet. The hint says where to begin.',
  noUnit: (answer: string, example: string): string =>
    say`${quoted(answer)} has no unit; give it as well, such as ${example}.`,
  noPercent: (answer: string): string =>
    say`${quoted(answer)} is no fraction from 0 to 1; give the percent sign as well, such as 40 %, or the fraction, such as 0.4.`,
  noCount: (answer: string): string =>
    say`${quoted(answer)} is no plain number; a count is asked for, such as 3.`,
  noOption: (answer: string, options: readonly string[]): string =>
    whole(
      options,
      'options',
      () =>
        say`${quoted(answer)} is none of the answers; choose one of: ${options.map((one) => say`${one}`).join('; ')}.`,
    ),
  /** How a value in each unit that must be given is written. */
  examples: { V: '2.5 V or 250 mV', Ω: '470 Ω or 4.7 kΩ' },
} as const;
