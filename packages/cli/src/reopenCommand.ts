import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Terminal } from './terminal.js';

/** `truesweep reopen`: opens a report, and scores again what is at hand of its recordings. */
export function reopenCommand(terminal: Terminal): Command {
  return new Command('reopen')
    .description(commandHelp.reopen)
    .argument('<report>', commandHelp.reportFile)
    .argument('[files...]', commandHelp.recheckFiles)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.reopenMore)
    .action(async (report: string, files: string[], { json }: { json?: true }) => {
      const { printRechecks } = await import('./printRechecks.js');
      const { reopenReport } = await import('./reopenReport.js');
      const opened = await reopenReport(report, files);
      terminal.print(json ? jsonText('reopen', opened) : layOut(printRechecks(opened), terminal));
    });
}
