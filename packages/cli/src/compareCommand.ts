import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';

interface CompareOptions {
  readonly job: string;
  readonly largest?: string;
  readonly json?: true;
}

/** `truesweep compare`: prints what changed between two recordings of one sensor. */
export function compareCommand(output: Output): Command {
  return new Command('compare')
    .description(commandHelp.compare)
    .argument('<before>', commandHelp.before)
    .argument('<after>', commandHelp.after)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--largest <size>', commandHelp.largest, '1 GB')
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.compareMore)
    .action(async (before: string, after: string, options: CompareOptions) => {
      const { allJudged } = await import('./allJudged.js');
      const { judgeFiles } = await import('./judgeFiles.js');
      const { compareSweeps } = await import('@truesweep/core');
      const { printComparison } = await import('./printComparison.js');
      const { answers } = await judgeFiles([before, after], options, output);
      const [first, second] = await allJudged(answers);
      const comparison = compareSweeps(first!.score, second!.score);
      output.print(
        options.json
          ? jsonText('compare', comparison)
          : layOut(printComparison(before, after, comparison), output),
      );
    });
}
