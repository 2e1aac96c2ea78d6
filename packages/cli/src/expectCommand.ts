import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jobBounds } from './inputBounds.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';
import { workingOption } from './workingOption.js';

interface ExpectOptions {
  readonly job: string;
  readonly json?: true;
  readonly working?: true;
}

/** `truesweep expect`: prints what a sound sensor must read on the hook-up of a job. */
export function expectCommand(output: Output): Command {
  return new Command('expect')
    .description(commandHelp.expect)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--json', commandHelp.json)
    .addOption(workingOption())
    .addHelpText('after', commandHelp.expectMore)
    .action(async ({ job, json, working }: ExpectOptions) => {
      const { expectReadings, isSweepJob } = await import('@truesweep/jobs');
      const { readAnyJobInput } = await import('./readInput.js');
      const read = await readAnyJobInput(job, jobBounds(output));
      if (!isSweepJob(read)) {
        const { printExpectedReadings } = await import('./printExpectedReadings.js');
        const ofKind = expectReadings(read);
        const text = () =>
          layOut(printExpectedReadings(read.title, read.sensor.name, ofKind), output);
        output.print(
          json
            ? jsonText('expect', { title: read.title, sensor: read.sensor.name, expected: ofKind })
            : text(),
        );
        if (working) {
          const { printWorkings } = await import('./printWorkings.js');
          output.print(layOut(printWorkings([]), output));
        }
        return;
      }
      const { expectedReadings } = await import('./expectedReadings.js');
      const { printExpected } = await import('./printExpected.js');
      const expected = expectedReadings(read);
      output.print(json ? jsonText('expect', expected) : layOut(printExpected(expected), output));
      if (working) {
        const { expectWorkings } = await import('./expectWorkings.js');
        const { printWorkings } = await import('./printWorkings.js');
        output.print(layOut(printWorkings(expectWorkings(read)), output));
      }
    });
}
