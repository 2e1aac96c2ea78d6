import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText, linesText, type Print } from './command.js';

/** `truesweep reopen`: opens a report, and scores again what is at hand of its recordings. */
export function reopenCommand(print: Print): Command {
  return new Command('reopen')
    .description(commandHelp.reopen)
    .argument('<report>', commandHelp.reportFile)
    .argument('[files...]', commandHelp.recheckFiles)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.reopenMore)
    .action(async (report: string, files: string[], { json }: { json?: true }) => {
      const { printRechecks, reopenReport } = await import('./reopenReport.js');
      const opened = await reopenReport(report, files);
      print(json ? jsonText(opened) : linesText(printRechecks(opened)));
    });
}
