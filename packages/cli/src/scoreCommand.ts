import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { exitCodeOf } from './exitCodes.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Terminal } from './terminal.js';

interface ScoreOptions {
  readonly job: string;
  readonly short?: true;
  readonly plot?: true;
  readonly json?: true;
  readonly exitByVerdict?: true;
}

/** `truesweep score`: judges recordings and prints what was found; reports the exit code. */
export function scoreCommand(terminal: Terminal, leaveWith: (code: number) => void): Command {
  return new Command('score')
    .description(commandHelp.score)
    .argument('[files...]', commandHelp.files)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--short', commandHelp.short)
    .option('--plot', commandHelp.plot)
    .option('--json', commandHelp.json)
    .option('--exit-by-verdict', commandHelp.exitByVerdict)
    .addHelpText('after', commandHelp.scoreMore)
    .action(async (files: string[], { job, short, plot, json, exitByVerdict }: ScoreOptions) => {
      const { judgeFiles } = await import('./judgeFiles.js');
      const { judged } = await judgeFiles(files, job);
      if (json) {
        const data = judged.map(({ file, reading, score }) => ({ file, reading, score }));
        terminal.print(jsonText('score', data));
      } else {
        const { printScore } = await import('./printScore.js');
        const { printCautions } = await import('./printCautions.js');
        const plots = plot ? await import('./plotSweep.js') : undefined;
        const texts = judged.map((one) => [
          ...printScore(one, { short: short ?? false }),
          ...(plots ? ['', ...plots.plotSweep(one.sweep, one.score.findings, terminal.width)] : []),
          '',
        ]);
        terminal.print(layOut([...texts.flat(), ...printCautions()], terminal));
      }
      if (exitByVerdict) leaveWith(exitCodeOf(judged.map(({ score }) => score.verdict)));
    });
}
