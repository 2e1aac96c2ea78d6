import type { Verdict } from '@truesweep/core';
import { commandHelp } from '@truesweep/wording';
import { Command, Option } from 'commander';
import type { AnswerWriter } from './answerWriter.js';
import { badInputCode, exitCodeOf } from './exitCodes.js';
import type { UnjudgedFile } from './printedData.js';
import type { Output, Terminal } from './terminal.js';

interface ScoreOptions {
  readonly job: string;
  readonly largest?: string;
  readonly short?: true;
  readonly plot?: true;
  readonly json?: true;
  readonly jsonLines?: true;
  readonly exitByVerdict?: true;
}

/** `truesweep score`: judges recordings and prints what was found; reports the exit code. */
export function scoreCommand(output: Output, leaveWith: (code: number) => void): Command {
  return new Command('score')
    .description(commandHelp.score)
    .argument('[files...]', commandHelp.files)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--largest <size>', commandHelp.largest, '1 GB')
    .option('--short', commandHelp.short)
    .option('--plot', commandHelp.plot)
    .option('--json', commandHelp.json)
    .addOption(new Option('--json-lines', commandHelp.jsonLines).conflicts('json'))
    .option('--exit-by-verdict', commandHelp.exitByVerdict)
    .addHelpText('after', commandHelp.scoreMore)
    .action(async (files: string[], options: ScoreOptions) => {
      const { judgeFiles } = await import('./judgeFiles.js');
      const { notJudgedText } = await import('./notJudgedText.js');
      const { unjudgedFile } = await import('./unjudgedFile.js');
      const { count, answers } = await judgeFiles(files, options, output);
      const writer = await writerOf(options, output);
      const verdicts: Verdict[] = [];
      const refused: UnjudgedFile[] = [];
      for await (const answer of answers) {
        if ('refusal' in answer) refused.push(unjudgedFile(answer));
        else verdicts.push(answer.score.verdict);
        writer.write(answer);
      }
      writer.end();
      if (refused.length > 0) {
        output.printError(notJudgedText(refused, count));
        leaveWith(badInputCode);
      } else if (options.exitByVerdict) {
        leaveWith(exitCodeOf(verdicts));
      }
    });
}

async function writerOf(
  { short, plot, json, jsonLines }: ScoreOptions,
  terminal: Terminal,
): Promise<AnswerWriter> {
  if (json) return (await import('./jsonAnswers.js')).jsonAnswers(terminal);
  if (jsonLines) return (await import('./jsonLinesAnswers.js')).jsonLinesAnswers(terminal);
  const { textAnswers } = await import('./textAnswers.js');
  if (!plot) return textAnswers(terminal, { short: short ?? false });
  const { plotSweep } = await import('./plotSweep.js');
  return textAnswers(terminal, {
    short: short ?? false,
    plot: ({ sweep, score }) => plotSweep(sweep, score.findings, terminal.width),
  });
}
