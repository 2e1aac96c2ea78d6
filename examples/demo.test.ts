import { expect, test } from 'vitest';
import { run } from '../packages/cli/src/run.js';

test('the demo judges its three recordings as they were made', async () => {
  let out = '';
  const print = (text: string) => {
    out += text;
  };
  const code = await run(['score', '--json', '--job', 'examples/outboard-sensor.job.json'], {
    print,
    printError: print,
    width: 80,
    colour: false,
  });
  expect(code).toBe(0);
  const judged: {
    file: string;
    score: {
      verdict: string;
      causes: { cause: string }[];
      findings: { kind: string; depth: number; travel: number }[];
    };
  }[] = JSON.parse(out);
  expect(judged.map(({ file, score }) => [file, score.verdict, score.causes[0]?.cause])).toEqual([
    ['examples/recordings/sound.csv', 'pass', 'none'],
    ['examples/recordings/worn.csv', 'fail', 'track'],
    ['examples/recordings/too-slow.csv', 'inconclusive', 'recording'],
  ]);
  // The worn spot drops the output, in the spring's closing too; the rebound beside it is none.
  const findings = judged[1]?.score.findings ?? [];
  expect(findings.map(({ kind }) => kind)).toEqual(Array(8).fill('dropout'));
  for (const { depth } of findings) expect(depth).toBeLessThan(-0.15);
  for (const { travel } of findings.slice(0, 7)) expect(travel).toBeCloseTo(0.06, 2);
});
