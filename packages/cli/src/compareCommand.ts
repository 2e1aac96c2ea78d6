import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Terminal } from './terminal.js';

interface CompareOptions {
  readonly job: string;
  readonly json?: true;
}

/** `truesweep compare`: prints what changed between two recordings of one sensor. */
export function compareCommand(terminal: Terminal): Command {
  return new Command('compare')
    .description(commandHelp.compare)
    .argument('<before>', commandHelp.before)
    .argument('<after>', commandHelp.after)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.compareMore)
    .action(async (before: string, after: string, { job, json }: CompareOptions) => {
      const { allJudged } = await import('./allJudged.js');
      const { judgeFiles } = await import('./judgeFiles.js');
      const { compareSweeps } = await import('@truesweep/core');
      const { printComparison } = await import('./printComparison.js');
      const { answers } = await judgeFiles([before, after], job);
      const [first, second] = await allJudged(answers);
      const comparison = compareSweeps(first!.score, second!.score);
      terminal.print(
        json
          ? jsonText('compare', comparison)
          : layOut(printComparison(before, after, comparison), terminal),
      );
    });
}
