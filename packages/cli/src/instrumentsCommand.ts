import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jobBounds } from './inputBounds.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';
import { workingOption } from './workingOption.js';

interface InstrumentsOptions {
  readonly job: string;
  readonly travel: string;
  readonly width: string;
  readonly stroke: string;
  readonly passes: string;
  readonly every?: string;
  readonly json?: true;
  readonly working?: true;
}

/** `truesweep instruments`: tells which instrument can show a worn spot at all, and how to set it. */
export function instrumentsCommand(output: Output): Command {
  return new Command('instruments')
    .description(commandHelp.instruments)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--travel <fraction>', commandHelp.spotTravel, '30 %')
    .option('--width <fraction>', commandHelp.spotWidth, '1 %')
    .option('--stroke <time>', commandHelp.stroke, '2 s')
    .option('--passes <number>', commandHelp.passes, '3')
    .option('--every <time>', commandHelp.every)
    .option('--json', commandHelp.json)
    .addOption(workingOption())
    .addHelpText('after', commandHelp.instrumentsMore)
    .action(async ({ job, json, working, ...entries }: InstrumentsOptions) => {
      const { adviseOnJob } = await import('./adviseOnJob.js');
      const { printInstruments } = await import('./printInstruments.js');
      const { readJobInput } = await import('./readInput.js');
      const read = await readJobInput(job, jobBounds(output));
      const advice = adviseOnJob(read, entries);
      output.print(
        json ? jsonText('instruments', advice) : layOut(printInstruments(advice), output),
      );
      if (!working) return;
      const { instrumentsWorkings } = await import('./instrumentsWorkings.js');
      const { printWorkings } = await import('./printWorkings.js');
      output.print(layOut(printWorkings(instrumentsWorkings(read, advice)), output));
    });
}
