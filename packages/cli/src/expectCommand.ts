import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText, linesText, type Print } from './command.js';

interface ExpectOptions {
  readonly job: string;
  readonly json?: true;
}

/** `truesweep expect`: prints what a sound sensor must read on the hook-up of a job. */
export function expectCommand(print: Print): Command {
  return new Command('expect')
    .description(commandHelp.expect)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.expectMore)
    .action(async ({ job, json }: ExpectOptions) => {
      const { expectedReadings, printExpected } = await import('./printExpected.js');
      const { readJobInput } = await import('./readInput.js');
      const expected = expectedReadings(await readJobInput(job));
      print(json ? jsonText(expected) : linesText(printExpected(expected)));
    });
}
