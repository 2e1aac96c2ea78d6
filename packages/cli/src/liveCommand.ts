import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import type { LiveOptions } from './live/recordLive.js';
import type { Output } from './terminal.js';

/** `truesweep live`: watches a sweep while it is recorded, saves it with its job, and judges it; reports the exit code. */
export function liveCommand(output: Output, leaveWith: (code: number) => void): Command {
  return new Command('live')
    .description(commandHelp.live)
    .argument('[source]', commandHelp.liveSource)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--out <file>', commandHelp.liveOut)
    .option('--baud <rate>', commandHelp.baud)
    .option('--time-column <column>', commandHelp.timeColumn)
    .option('--signal-column <column>', commandHelp.signalColumn)
    .option('--supply-column <column>', commandHelp.supplyColumn)
    .option('--time-unit <unit>', commandHelp.timeUnit)
    .option('--signal-unit <unit>', commandHelp.signalUnit)
    .option('--volts-per-unit <voltage>', commandHelp.voltsPerUnit)
    .option('--rate <frequency>', commandHelp.sampleRate)
    .option('--delimiter <sign>', commandHelp.delimiter)
    .option('--decimal <sign>', commandHelp.decimal)
    .option('--for <time>', commandHelp.liveFor)
    .option('--idle <time>', commandHelp.liveIdle)
    .option('--short', commandHelp.short)
    .option('--json', commandHelp.json)
    .option('--exit-by-verdict', commandHelp.exitByVerdict)
    .addHelpText('after', commandHelp.liveMore)
    .action(async (source: string | undefined, options: LiveOptions) => {
      const { recordLive } = await import('./live/recordLive.js');
      const code = await recordLive(source, options, output);
      leaveWith(code);
    });
}
