import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { badInputCode } from './exitCodes.js';
import { inputBounds } from './inputBounds.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';

interface ReopenOptions {
  readonly largest?: string;
  readonly json?: true;
}

/** `truesweep reopen`: opens a report, and scores again what is at hand of its recordings; reports the exit code. */
export function reopenCommand(output: Output, leaveWith: (code: number) => void): Command {
  return new Command('reopen')
    .description(commandHelp.reopen)
    .argument('<report>', commandHelp.reportFile)
    .argument('[files...]', commandHelp.recheckFiles)
    .option('--largest <size>', commandHelp.largest, '1 GB')
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.reopenMore)
    .action(async (report: string, files: string[], { json, largest }: ReopenOptions) => {
      const { notJudgedText } = await import('./notJudgedText.js');
      const { printRechecks } = await import('./printRechecks.js');
      const { reopenReport } = await import('./reopenReport.js');
      const opened = await reopenReport(report, files, {
        report: inputBounds(output, 'a report', largest),
        recording: inputBounds(output, 'a recording', largest),
      });
      if ('judged' in opened) {
        const { printedJob } = await import('./judgedJob.js');
        const { printReadings } = await import('./printReadings.js');
        const text = () => layOut(printReadings(opened), output);
        output.print(json ? jsonText('reopen', printedJob(opened)) : text());
        return;
      }
      output.print(json ? jsonText('reopen', opened) : layOut(printRechecks(opened), output));
      if (opened.refused.length === 0) return;
      output.printError(notJudgedText(opened.refused, files.length));
      leaveWith(badInputCode);
    });
}
