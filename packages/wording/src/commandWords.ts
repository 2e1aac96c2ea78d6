import { texts } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

/** An option or a word that a command takes, as its help shows it. */
export interface CommandPart {
  /** Such as `--job <file>` or `<before>`. */
  readonly written: string;
  /** What it is. */
  readonly meaning: string;
}

/**
 * Refused: a command without what it needs; everything that is missing is told.
 *
 * @example
 * const missing = [{ written: '--out <file>', meaning: 'the file to write' }];
 * lackingSentence('report', missing) // => 'report needs --out <file> (the file to write); “truesweep report --help” shows a worked example.'
 */
export function lackingSentence(command: string, missing: readonly CommandPart[]): string {
  return whole(missing, 'missing', () => {
    const parts = missing.map(({ written, meaning }) => say`${written} (${meaning})`);
    return say`${command} needs ${joined(parts, 'missing')}; ${exampleHint(command)}`;
  });
}

/**
 * Refused: an option without its value.
 *
 * @example
 * noValueSentence('--job', '<file>', 'the job').startsWith('--job needs a <file>: the job') // => true
 */
export function noValueSentence(option: string, value: string, meaning: string): string {
  return say`${option} needs a ${value}: ${meaning}.`;
}

/**
 * Refused: an option that a command doesn't have.
 *
 * @param nearest The nearest that it has; all are told where there is none.
 *
 * @example
 * unknownOptionSentence('score', '--shor', ['--short'], '--short') // => 'score has no option --shor; it may be meant to be --short.'
 */
export function unknownOptionSentence(
  command: string,
  option: string,
  known: readonly string[],
  nearest?: string,
): string {
  const right = nearest
    ? say`it may be meant to be ${nearest}`
    : say`${command} has ${joined(known, 'known')}`;
  return say`${command} has no option ${option}; ${right}.`;
}

/**
 * Refused: a command that there isn't.
 *
 * @param nearest The nearest that there is; all are told where there is none.
 *
 * @example
 * unknownCommandSentence('scores', ['score', 'plan'], 'score') // => 'There is no command scores; it may be meant to be score.'
 */
export function unknownCommandSentence(
  command: string,
  known: readonly string[],
  nearest?: string,
): string {
  const right = nearest
    ? say`it may be meant to be ${nearest}`
    : say`the commands are ${joined(known, 'known')}`;
  return say`There is no command ${command}; ${right}.`;
}

/**
 * Refused: a word too many.
 *
 * @example
 * spareWordSentence('expect', 'a.csv', []) // => 'expect takes no words without an option, and a.csv is one; “truesweep expect --help” shows a worked example.'
 */
export function spareWordSentence(command: string, word: string, taken: readonly string[]): string {
  const words = joined(taken, 'taken');
  const wanted = words === '' ? 'no words without an option' : say`only ${words}`;
  return say`${command} takes ${wanted}, and ${word} is one${words === '' ? '' : ' more'}; ${exampleHint(command)}`;
}

/**
 * Refused: two options that shut each other out.
 *
 * @example
 * eitherSentence('--json', '--json-lines').startsWith('--json and --json-lines') // => true
 */
export function eitherSentence(one: string, other: string): string {
  return say`${one} and ${other} can't be given together; give one of them.`;
}

function exampleHint(command: string): string {
  return say`“truesweep ${command} --help” shows a worked example.`;
}

function joined(parts: readonly string[], path: string): string {
  texts(parts, path);
  if (parts.length < 2) return parts.join('');
  return say`${parts.slice(0, -1).join(', ')} and ${parts.at(-1)!}`;
}
