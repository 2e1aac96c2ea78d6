import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import type { Terminal } from './terminal.js';

interface ReportOptions {
  readonly job: string;
  readonly out: string;
  readonly markdown?: true;
  readonly overwrite?: true;
  readonly json?: true;
}

/** `truesweep report`: judges recordings and writes the report. */
export function reportCommand(terminal: Terminal): Command {
  return new Command('report')
    .description(commandHelp.report)
    .argument('[files...]', commandHelp.files)
    .requiredOption('--job <file>', commandHelp.job)
    .requiredOption('--out <file>', commandHelp.out)
    .option('--markdown', commandHelp.markdown)
    .option('--overwrite', commandHelp.overwrite)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.reportMore)
    .action(async (files: string[], options: ReportOptions) => {
      const { writeReport } = await import('./writeReport.js');
      terminal.print(await writeReport(files, options));
    });
}
