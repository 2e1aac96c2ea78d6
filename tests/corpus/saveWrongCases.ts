import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { JudgedCase } from './judgeCase.js';

const folder = fileURLToPath(new URL('../../node_modules/.cache/truesweep/', import.meta.url));

/** Writes each wrongly judged case with what was true and what was reported; returns the file's path. */
export function saveWrongCases(cases: readonly JudgedCase[]): string {
  const file = `${folder}corpus.json`;
  mkdirSync(folder, { recursive: true });
  const wrong = cases.filter((one) => one.wrong.length > 0).map(described);
  writeFileSync(file, JSON.stringify(wrong, undefined, 1));
  return file;
}

function described({ plan, truth, score, wrong, events, findings }: JudgedCase): object {
  const { seed, className, recorder } = plan;
  return {
    seed,
    className,
    wrong,
    recorder: `${recorder.name}, ${recorder.interval} s`,
    verdict: { allowed: truth.verdicts, judged: score.verdict, open: truth.open },
    causes: { allowed: truth.causes, judged: score.causes },
    visible: { true: truth.visible, found: score.quality.visible },
    adequate: truth.adequate,
    checks: score.checks.filter(({ outcome }) => outcome !== 'conforms'),
    events,
    findings,
  };
}
