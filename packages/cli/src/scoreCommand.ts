import { InputError, type Verdict } from '@truesweep/core';
import type { ReadingsJob } from '@truesweep/jobs';
import { commandHelp, readingsInJobSentence, visibleText } from '@truesweep/wording';
import { Command, Option } from 'commander';
import type { AnswerWriter } from './answerWriter.js';
import { badInputCode, exitCodeOf } from './exitCodes.js';
import { jobBounds } from './inputBounds.js';
import { standardInput } from './inputPieces.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { UnjudgedFile } from './printedData.js';
import type { Output, Terminal } from './terminal.js';
import { workingOption } from './workingOption.js';

interface ScoreOptions {
  readonly job: string;
  readonly largest?: string;
  readonly short?: true;
  readonly plot?: true;
  readonly working?: true;
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
    .addOption(workingOption('jsonLines', 'short'))
    .option('--json', commandHelp.json)
    .addOption(new Option('--json-lines', commandHelp.jsonLines).conflicts('json'))
    .option('--exit-by-verdict', commandHelp.exitByVerdict)
    .addHelpText('after', commandHelp.scoreMore)
    .action(async (files: string[], options: ScoreOptions) => {
      const { isSweepJob } = await import('@truesweep/jobs');
      const { anyJobOf } = await import('./anyJobOf.js');
      // From the standard input a job can be read once: there it is one of sweeps, whose files are named.
      const job = options.job === standardInput ? undefined : await anyJobOf(options.job, output);
      if (job && !isSweepJob(job)) {
        leaveWith(await scoreReadings(job, files, options, output));
        return;
      }
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

/** Judges the readings of a job that is none of sweeps; returns the exit code. */
async function scoreReadings(
  job: ReadingsJob,
  files: readonly string[],
  { job: path, json, jsonLines, working, exitByVerdict }: ScoreOptions,
  output: Output,
): Promise<number> {
  if (files.length > 0) {
    throw new InputError('unexpected', files[0]!, readingsInJobSentence(job.sensor.kind));
  }
  const { judgedJob, printedJob } = await import('./judgedJob.js');
  const { printReadings } = await import('./printReadings.js');
  const judged = await judgedJob(job, path, jobBounds(output));
  const line = () => `${visibleText(JSON.stringify(printedJob(judged)))}\n`;
  const text = () => layOut(printReadings(judged), output);
  output.print(json ? jsonText('score', printedJob(judged)) : jsonLines ? line() : text());
  if (working) {
    const { printWorkings } = await import('./printWorkings.js');
    const { readingsWorkings } = await import('./readingsWorkings.js');
    output.print(layOut(printWorkings(readingsWorkings(judged.judged)), output));
  }
  return exitByVerdict ? exitCodeOf([judged.judged.judgement.verdict]) : 0;
}

async function writerOf(
  { short, plot, working, json, jsonLines }: ScoreOptions,
  terminal: Terminal,
): Promise<AnswerWriter> {
  if (json) return (await import('./jsonAnswers.js')).jsonAnswers(terminal);
  if (jsonLines) return (await import('./jsonLinesAnswers.js')).jsonLinesAnswers(terminal);
  const { textAnswers } = await import('./textAnswers.js');
  const plotted = plot && (await import('./plotSweep.js')).plotSweep;
  const worked = working && {
    ...(await import('@truesweep/explain')),
    ...(await import('./printWorkings.js')),
  };
  return textAnswers(terminal, {
    short: short ?? false,
    ...(plotted && {
      plot: ({ sweep, score }) => plotted(sweep, score.findings, terminal.width),
    }),
    ...(worked && {
      working: ({ score, expected, criteria }) =>
        worked.printWorkings(worked.explainScore(score, expected, criteria)),
    }),
  });
}
