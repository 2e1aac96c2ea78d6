import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { exitCodeOf } from './exitCodes.js';
import { judgeFiles } from './judgeFiles.js';
import { printCautions } from './printCautions.js';
import { printScore } from './printScore.js';

interface ScoreOptions {
  readonly job: string;
  readonly short?: true;
  readonly json?: true;
  readonly exitByVerdict?: true;
}

/** `truesweep score`: judges recordings and prints what was found; reports the exit code. */
export function scoreCommand(
  print: (text: string) => void,
  leaveWith: (code: number) => void,
): Command {
  return new Command('score')
    .description(commandHelp.score)
    .argument('[files...]', commandHelp.files)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--short', commandHelp.short)
    .option('--json', commandHelp.json)
    .option('--exit-by-verdict', commandHelp.exitByVerdict)
    .addHelpText('after', commandHelp.scoreMore)
    .action(async (files: string[], { job, short, json, exitByVerdict }: ScoreOptions) => {
      const judged = await judgeFiles(files, job);
      if (json) {
        const data = judged.map(({ file, reading, score }) => ({ file, reading, score }));
        print(`${JSON.stringify(data, undefined, 2)}\n`);
      } else {
        const texts = judged.map((one) => printScore(one, { short: short ?? false }));
        print(`${[...texts, printCautions()].map((lines) => lines.join('\n')).join('\n\n')}\n`);
      }
      if (exitByVerdict) leaveWith(exitCodeOf(judged.map(({ score }) => score.verdict)));
    });
}
