import { basename } from 'node:path';
import { isSweepJob } from '@truesweep/jobs';
import { writeFileAtomically } from '@truesweep/jobs/node';
import { type Report, reportHtml, reportMarkdown } from '@truesweep/report';
import { howRead, visibleText, writtenSentence } from '@truesweep/wording';
import { allJudged } from './allJudged.js';
import { anyJobOf } from './anyJobOf.js';
import { standardInput } from './inputPieces.js';
import { jsonText } from './jsonText.js';
import { judgeFiles } from './judgeFiles.js';
import { refuseInput } from './refuseInput.js';
import type { Output } from './terminal.js';
import { writeReadingsReport } from './writeReadingsReport.js';

/** Judges recordings by a job and writes the report; tells what was written. */
export async function writeReport(
  files: readonly string[],
  options: {
    readonly job: string;
    readonly largest?: string;
    readonly out: string;
    readonly markdown?: true;
    readonly overwrite?: true;
    readonly working?: true;
    readonly json?: true;
  },
  output: Output,
): Promise<string> {
  const { out, markdown, overwrite, working, json } = options;
  const any = options.job === standardInput ? undefined : await anyJobOf(options.job, output);
  if (any && !isSweepJob(any)) return await writeReadingsReport(any, files, options, output);
  const { job, inputs, answers } = await judgeFiles(files, options, output);
  await refuseInput(out, inputs);
  const judged = await allJudged(answers);
  const explain = working && (await import('@truesweep/explain'));
  const report: Report = {
    job,
    writtenAt: new Date().toISOString(),
    recordings: judged.map(({ file, bytes, sha256, sweep, reading, recorder, score, ...by }) => ({
      name: basename(file),
      bytes,
      sha256,
      howRead: howRead(reading),
      recorder,
      sweep,
      score,
      ...(explain && { workings: explain.explainScore(score, by.expected, by.criteria) }),
    })),
  };
  const text = markdown ? reportMarkdown(report) : reportHtml(report);
  await writeFileAtomically(out, text, { overwrite: overwrite ?? false });
  const verdicts = judged.map(({ file, score }) => ({ file, verdict: score.verdict }));
  return json
    ? jsonText('report', { out, recordings: verdicts })
    : `${visibleText(writtenSentence(out))}\n`;
}
