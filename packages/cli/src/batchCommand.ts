import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import type { BatchOptions } from './batch/judgeBatch.js';
import type { Output } from './terminal.js';

/** `truesweep batch`: judges any number of recordings into a folder of results; reports the exit code. */
export function batchCommand(output: Output, leaveWith: (code: number) => void): Command {
  return new Command('batch')
    .description(commandHelp.batch)
    .argument('[paths...]', commandHelp.batchPaths)
    .requiredOption('--out <folder>', commandHelp.batchOut)
    .option('--job <file>', commandHelp.batchJob)
    .option('--manifest <file>', commandHelp.batchManifest)
    .option('--history <file>', commandHelp.batchHistory)
    .option('--workers <count>', commandHelp.workers)
    .option('--largest <size>', commandHelp.largest, '1 GB')
    .option('--json', commandHelp.json)
    .option('--exit-by-verdict', commandHelp.exitByVerdict)
    .addHelpText('after', commandHelp.batchMore)
    .action(async (paths: string[], options: BatchOptions) => {
      const { judgeBatch } = await import('./batch/judgeBatch.js');
      leaveWith(await judgeBatch(paths, options, output));
    });
}
