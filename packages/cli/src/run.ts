import { InputError } from '@truesweep/core';
import { commandHelp, visibleText } from '@truesweep/wording';
import { Command, CommanderError } from 'commander';
import manifest from '../package.json' with { type: 'json' };
import { batchCommand } from './batchCommand.js';
import { compareCommand } from './compareCommand.js';
import { completionCommand } from './completionCommand.js';
import { errorLine } from './errorLine.js';
import { badInputCode } from './exitCodes.js';
import { expectCommand } from './expectCommand.js';
import { historyCommand } from './historyCommand.js';
import { instrumentsCommand } from './instrumentsCommand.js';
import { layOut } from './layOut.js';
import { liveCommand } from './liveCommand.js';
import { planCommand } from './planCommand.js';
import { printCautions } from './printCautions.js';
import { readingsCommand } from './readingsCommand.js';
import { refusalOf } from './refusalOf.js';
import { refusedWords } from './refusedWords.js';
import { reopenCommand } from './reopenCommand.js';
import { reportCommand } from './reportCommand.js';
import { scoreCommand } from './scoreCommand.js';
import { setClosedCommand } from './setClosedCommand.js';
import { simulateCommand } from './simulateCommand.js';
import type { Output } from './terminal.js';
import { terminalsCommand } from './terminalsCommand.js';
import { writeJobCommand } from './writeJobCommand.js';

/**
 * Runs the command line.
 *
 * @param args What stands behind the program's name.
 * @returns The exit code.
 */
export async function run(args: readonly string[], output: Output): Promise<number> {
  const { print, printError, width } = output;
  let exitCode = 0;
  const leaveWith = (code: number) => {
    exitCode = code;
  };
  const program = new Command('truesweep')
    .description(commandHelp.program)
    .version(manifest.version, '--version', commandHelp.version)
    .helpCommand(false)
    .addHelpText('after', commandHelp.programMore)
    .addHelpText('afterAll', () => `\n${layOut(printCautions(), output)}`);
  const commands = [
    writeJobCommand(output),
    terminalsCommand(output),
    planCommand(output),
    expectCommand(output),
    scoreCommand(output, leaveWith),
    batchCommand(output, leaveWith),
    liveCommand(output, leaveWith),
    readingsCommand(output, leaveWith),
    compareCommand(output),
    historyCommand(output),
    instrumentsCommand(output),
    setClosedCommand(output),
    reportCommand(output),
    reopenCommand(output, leaveWith),
    simulateCommand(output),
    completionCommand(output, program),
  ];
  for (const command of commands) program.addCommand(command);
  for (const command of [program, ...commands]) {
    command
      .helpOption('-h, --help', commandHelp.help)
      .showSuggestionAfterError(false)
      .exitOverride((error) => {
        throw refusedWords(error, command) ?? error;
      })
      .configureOutput({
        writeOut: print,
        writeErr: (text) => printError(visibleText(text, '\n')),
        // Said below, as of every other input.
        outputError: () => {},
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
    printError(errorLine(refusalOf(error)));
    return badInputCode;
  }
}
