import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { badInputCode } from './exitCodes.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';

/** `truesweep reopen`: opens a report, and scores again what is at hand of its recordings; reports the exit code. */
export function reopenCommand(output: Output, leaveWith: (code: number) => void): Command {
  return new Command('reopen')
    .description(commandHelp.reopen)
    .argument('<report>', commandHelp.reportFile)
    .argument('[files...]', commandHelp.recheckFiles)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.reopenMore)
    .action(async (report: string, files: string[], { json }: { json?: true }) => {
      const { notJudgedText } = await import('./notJudgedText.js');
      const { printRechecks } = await import('./printRechecks.js');
      const { reopenReport } = await import('./reopenReport.js');
      const opened = await reopenReport(report, files);
      output.print(json ? jsonText('reopen', opened) : layOut(printRechecks(opened), output));
      if (opened.refused.length === 0) return;
      output.printError(notJudgedText(opened.refused, files.length));
      leaveWith(badInputCode);
    });
}
