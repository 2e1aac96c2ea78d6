import { InputError, nearestName } from '@truesweep/core';
import {
  type CommandPart,
  eitherSentence,
  lackingSentence,
  noValueSentence,
  spareWordSentence,
  unknownCommandSentence,
  unknownOptionSentence,
} from '@truesweep/wording';
import type { Command, CommanderError, Option } from 'commander';

/**
 * What is wrong with the words of a command, said as of every other input; whatever is missing is told at once. Undefined where nothing is
 * wrong: help was shown, or the version.
 */
export function refusedWords(
  { code, message }: CommanderError,
  command: Command,
): InputError | undefined {
  const quoted = /'(.*)'/s.exec(message)?.[1] ?? '';
  switch (code) {
    case 'commander.missingMandatoryOptionValue':
    case 'commander.missingArgument':
      return lacking(command);
    case 'commander.optionMissingArgument':
      return noValue(quoted, command);
    case 'commander.unknownOption':
      return unknownOption(quoted, command);
    case 'commander.unknownCommand':
      return unknownCommand(quoted, command);
    case 'commander.excessArguments':
      return spareWord(command);
    case 'commander.conflictingOption':
      return either(message);
    default:
      return undefined;
  }
}

function lacking(command: Command): InputError {
  const options = command.options
    .filter((one) => one.mandatory && command.getOptionValue(one.attributeName()) === undefined)
    .map(partOf);
  const words = command.registeredArguments
    .slice(command.args.length)
    .filter(({ required }) => required)
    .map((one) => ({ written: `<${one.name()}>`, meaning: one.description }));
  const missing = [...options, ...words];
  const path = missing[0]!.written.replace(/ .*/, '').replace(/^<(.*)>$/, '$1');
  return new InputError('missing', path, lackingSentence(command.name(), missing));
}

function partOf({ flags, description }: Option): CommandPart {
  return { written: flags, meaning: description };
}

function noValue(flags: string, command: Command): InputError {
  const [option = '', value = ''] = flags.split(' ');
  const meaning = command.options.find((one) => one.flags === flags)?.description ?? '';
  return new InputError('missing', option, noValueSentence(option, value, meaning));
}

function unknownOption(flag: string, command: Command): InputError {
  const known = [...command.options.flatMap(({ long }) => long ?? []), '--help'];
  const sentence = unknownOptionSentence(command.name(), flag, known, nearestName(flag, known));
  return new InputError('unknown-name', flag, sentence);
}

function unknownCommand(name: string, program: Command): InputError {
  const known = program.commands.map((one) => one.name());
  const sentence = unknownCommandSentence(name, known, nearestName(name, known));
  return new InputError('unknown-name', name, sentence);
}

function spareWord(command: Command): InputError {
  const taken = command.registeredArguments.map((one) => `<${one.name()}>`);
  const word = command.args[taken.length] ?? '';
  return new InputError('unexpected', word, spareWordSentence(command.name(), word, taken));
}

function either(message: string): InputError {
  const [one = '', other = ''] = [...message.matchAll(/'(--[\w-]+)/g)].map(([, flag]) => flag!);
  return new InputError('unexpected', one, eitherSentence(one, other));
}
