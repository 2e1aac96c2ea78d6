/**
 * What the command line says of itself.
 *
 * @example
 * commandHelp.help // => 'show this help'
 */
export const commandHelp = {
  program:
    'Judges bench recordings of contacting throttle position sensors (potentiometers): may this sensor go back on the engine?',
  score: 'Judge recorded sweeps: verdict, findings, evidence, and what to do next.',
  files:
    "recordings to judge, as text with a column of times and one of voltages; the job's own when left out",
  job: 'the job: sensor, hook-up and instrument (JSON)',
  short: 'print only the verdict, its cause and what to do next',
  json: 'print everything as JSON data instead of text',
  exitByVerdict: 'leave with an exit code that tells the verdict',
  help: 'show this help',
  version: 'show the version',
  programMore: `
truesweep score --help shows a worked example and the exit codes.
`,
  scoreMore: `
A worked example. On the bench a 5 V supply feeds the sensor through 1 kΩ; a
logger sits on the wiper. You record while you turn the throttle slowly from
stop to stop and back three times, resting at each stop, then let it snap
shut. You write sensor, hook-up and logger into outboard.job.json and save
the recording as port-side.csv:

  truesweep score port-side.csv --job outboard.job.json

Verdicts:
  pass          nothing speaks against the sensor; it may go back
  marginal      something shows that a second recording must settle
  fail          don't put it back as it is; the cause says what to mend
  inconclusive  the recording can't tell; it says how to record instead

Exit codes:
  0   the work was done, whatever the verdict
  1   truesweep itself failed
  2   an input was wrong; nothing is printed but what was wrong
with --exit-by-verdict, for scripts (of several files the worst verdict
counts: fail, then inconclusive, then marginal, then pass):
  0   pass      10  marginal      11  fail      12  inconclusive
`,
} as const satisfies Record<string, string>;

/**
 * Refused: neither files nor a job that lists any.
 *
 * @example
 * nothingToScoreSentence.includes('the job lists none') // => true
 */
export const nothingToScoreSentence =
  'No recording is named, and the job lists none; name the files to judge.';

/**
 * A refusal as it is printed: where, what, and its code.
 *
 * @example
 * const place = { line: 3, column: 7 };
 * refusalSentence({ path: 'a.csv', place, sentence: 'No.', code: 'x' }) // => 'a.csv, line 3, column 7: No. (x)'
 */
export function refusalSentence(refusal: {
  readonly path: string;
  readonly place?: { readonly line: number; readonly column: number } | undefined;
  readonly sentence: string;
  readonly code: string;
}): string {
  const { path, place, sentence, code } = refusal;
  const where = place ? `${path}, line ${place.line}, column ${place.column}` : path;
  return `${where}: ${sentence} (${code})`;
}
