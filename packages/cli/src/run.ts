import { InputError } from '@truesweep/core';
import { commandHelp, refusalSentence } from '@truesweep/wording';
import { Command, CommanderError } from 'commander';
import manifest from '../package.json' with { type: 'json' };
import { badInputCode } from './exitCodes.js';
import { scoreCommand } from './scoreCommand.js';
import { width } from './wrapText.js';

/** Where the command line writes to. */
export interface Output {
  readonly print: (text: string) => void;
  readonly printError: (text: string) => void;
}

/**
 * Runs the command line.
 *
 * @param args What stands behind the program's name.
 * @returns The exit code.
 */
export async function run(args: readonly string[], { print, printError }: Output): Promise<number> {
  let exitCode = 0;
  const score = scoreCommand(print, (code) => {
    exitCode = code;
  });
  const program = new Command('truesweep')
    .description(commandHelp.program)
    .version(manifest.version, '--version', commandHelp.version)
    .helpCommand(false)
    .addHelpText('after', commandHelp.programMore);
  program.addCommand(score);
  for (const command of [program, score]) {
    command
      .helpOption('-h, --help', commandHelp.help)
      .exitOverride()
      .configureOutput({
        writeOut: print,
        writeErr: printError,
        getOutHelpWidth: () => width,
        getErrHelpWidth: () => width,
      });
  }
  try {
    await program.parseAsync([...args], { from: 'user' });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : badInputCode;
    if (!(error instanceof InputError)) throw error;
    const { path, place, message, code } = error;
    printError(`truesweep: ${refusalSentence({ path, place, sentence: message, code })}\n`);
    return badInputCode;
  }
}
