import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { exitCodeOf } from './exitCodes.js';
import { jobBounds } from './inputBounds.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';
import type { TypedUncertainties } from './typedReadings.js';
import { workingOption } from './workingOption.js';

interface ReadingsOptions extends TypedUncertainties {
  readonly job: string;
  readonly json?: true;
  readonly working?: true;
  readonly exitByVerdict?: true;
}

/** `truesweep readings`: judges single readings that are typed in, or those of the job. */
export function readingsCommand(output: Output, leaveWith: (code: number) => void): Command {
  return new Command('readings')
    .description(commandHelp.readings)
    .argument('[readings...]', commandHelp.typedReadings)
    .requiredOption('--job <file>', commandHelp.anyJob)
    .option('--meter <uncertainty>', commandHelp.meterUncertainty, '0.5 %')
    .option('--thermometer <uncertainty>', commandHelp.thermometerUncertainty)
    .option('--gauge <uncertainty>', commandHelp.gaugeUncertainty)
    .option('--supply <voltage>', commandHelp.supplyRead)
    .option('--leads <resistance>', commandHelp.leadsRead)
    .option('--json', commandHelp.json)
    .addOption(workingOption())
    .option('--exit-by-verdict', commandHelp.exitByVerdict)
    .addHelpText('after', commandHelp.readingsMore)
    .action(
      async (
        typed: string[],
        { job: path, json, working, exitByVerdict, ...told }: ReadingsOptions,
      ) => {
        const { judgedJob, printedJob, readingsJobOf } = await import('./judgedJob.js');
        const { printReadings } = await import('./printReadings.js');
        const { readAnyJobInput } = await import('./readInput.js');
        const { withTypedReadings } = await import('./typedReadings.js');
        const bounds = jobBounds(output);
        const job = readingsJobOf(await readAnyJobInput(path, bounds));
        const read = typed.length > 0 ? withTypedReadings(job, typed, told) : job;
        const judged = await judgedJob(read, path, bounds);
        output.print(
          json ? jsonText('readings', printedJob(judged)) : layOut(printReadings(judged), output),
        );
        if (working) {
          const { printWorkings } = await import('./printWorkings.js');
          const { readingsWorkings } = await import('./readingsWorkings.js');
          output.print(layOut(printWorkings(readingsWorkings(judged.judged)), output));
        }
        if (exitByVerdict) leaveWith(exitCodeOf([judged.judged.judgement.verdict]));
      },
    );
}
