import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jobBounds } from './inputBounds.js';
import type { Output } from './terminal.js';

interface SimulateOptions {
  readonly job: string;
  readonly wornAt?: string;
  readonly wornWidth: string;
  readonly interval: string;
  readonly noise: string;
  readonly seed: string;
  readonly json?: true;
}

/** `truesweep simulate`: prints an invented recording of the job's sensor, to practise on. */
export function simulateCommand(output: Output): Command {
  return new Command('simulate')
    .description(commandHelp.simulate)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--worn-at <travel>', commandHelp.wornAt)
    .option('--worn-width <travel>', commandHelp.wornWidth, '1 %')
    .option('--interval <time>', commandHelp.interval, '1 ms')
    .option('--noise <voltage>', commandHelp.noise, '1 mV')
    .option('--seed <number>', commandHelp.seed, '1')
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.simulateMore)
    .action(async ({ job, json, ...entries }: SimulateOptions) => {
      const { simulatedRecording } = await import('./simulatedRecording.js');
      const { readJobInput } = await import('./readInput.js');
      output.print(
        simulatedRecording(await readJobInput(job, jobBounds(output)), entries, json ?? false),
      );
    });
}
