import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import type { Output } from './terminal.js';

interface ReportOptions {
  readonly job: string;
  readonly largest?: string;
  readonly out: string;
  readonly markdown?: true;
  readonly overwrite?: true;
  readonly working?: true;
  readonly json?: true;
}

/** `truesweep report`: judges recordings and writes the report. */
export function reportCommand(output: Output): Command {
  return new Command('report')
    .description(commandHelp.report)
    .argument('[files...]', commandHelp.files)
    .requiredOption('--job <file>', commandHelp.job)
    .requiredOption('--out <file>', commandHelp.out)
    .option('--largest <size>', commandHelp.largest, '1 GB')
    .option('--markdown', commandHelp.markdown)
    .option('--overwrite', commandHelp.overwrite)
    .option('--working', commandHelp.workingInReport)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.reportMore)
    .action(async (files: string[], options: ReportOptions) => {
      const { writeReport } = await import('./writeReport.js');
      output.print(await writeReport(files, options, output));
    });
}
