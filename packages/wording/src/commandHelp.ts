import { checkText, listOf, type RatingChecks } from '@truesweep/core';
import { say } from './say.js';
import { whole } from './whole.js';

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
  largest: 'read no larger recording than this',
  short: 'print only the verdict, its cause and what to do next',
  batch:
    'Judge any number of recordings on all processors into a folder of results; goes on where it was stopped.',
  batchPaths:
    "folders, files, or patterns in quotation marks; the job's own recordings when nothing is named",
  batchManifest:
    'a list of recordings, CSV or a JSON object a line: file, and as you like job, sensor, date, note',
  batchJob: 'the job of recordings for which the list names none (JSON)',
  batchOut: 'the folder for the results; made where there is none',
  workers: 'how many recordings are judged at once; one for each processor when left out',
  history:
    'Keep what was judged of sensors over the years, and tell what changed of each beyond what its recordings leave open.',
  historySources:
    'results to add: the folder of a batch or of a queue, a file of results (JSON Lines), or the saved shelf of the calculators',
  historyStore:
    'the file that the history is kept in; made where there is none. Left out, the sources are looked at and nothing is kept',
  historySensor: 'only this sensor, with all its records',
  historySave: 'save what can be read of a damaged history into this file',
  batchHistory: 'add what was judged to this history too',
  live: 'Watch a sweep while it is recorded; save it with its job, then judge it.',
  liveSource:
    'a serial port, a file that grows, or - for what another program prints; the only port that is plugged in when left out',
  liveOut:
    'the file to record into; named by date and time when left out. Its job is saved beside it',
  baud: 'rate of the serial line; the usual ones are tried when left out',
  timeColumn: 'the column of the times, by its heading or its number from 0',
  signalColumn: 'the column of the signal',
  supplyColumn: "the column of the voltage across the sensor's end terminals",
  timeUnit: 's, ms, us, or clock for times of day',
  signalUnit: 'V, mV, counts or %',
  voltsPerUnit: 'what one count or one percent is, such as 4.883mV for 5 V in 10 bits',
  sampleRate: 'samples a second, such as 1kHz, where the lines have no times',
  delimiter: 'what stands between the fields, such as ";"',
  decimal: 'the decimal sign of the numbers, . or ,',
  liveFor: 'end after so much was recorded, such as 60s',
  liveIdle: 'end when nothing came for so long, such as 3s',
  plan: 'Advise on the limiting resistor, and show what each wrong connection would do.',
  wiperCurrent: "the wiper contact's largest continuous current, such as 1 mA",
  trackPower: "the track's largest power, such as 0.2 W",
  sourceCurrent: "the source's largest current, such as 100 mA",
  span: 'part of the span that must remain, such as 80 %',
  otherSource: 'another source to look at too, such as a 12 V battery',
  expect: 'Print what a sound sensor must read on the hook-up: windows, curve, currents.',
  readings:
    'Judge single readings of a temperature, pressure or two-state sensor or of a winding, typed in or out of the job.',
  typedReadings:
    'where it was read and what, such as "21.5 °C=2.41 kΩ", ice=6.2k, "10 inHg vacuum=2.53 V", open=4.03V, rest=0.98V; the job\'s own when left out',
  anyJob: 'the job: the sensor, and what it was read on (JSON)',
  meterUncertainty: 'standard uncertainty of the meter, a part of the reading or a quantity',
  thermometerUncertainty: 'standard uncertainty of the thermometer, such as 0.3 K',
  gaugeUncertainty: "standard uncertainty of the pump's gauge, such as 0.4 kPa",
  supplyRead: 'the supply, measured at the sensor with the readings',
  leadsRead: 'what the test leads alone read, such as 0.2',
  compare:
    'Print what changed between two recordings of one sensor, such as before and after cleaning.',
  before: 'the earlier recording',
  after: 'the later recording',
  writeJob:
    "Write a job's file: sensor, hook-up and instrument, from options, or asked for one by one on a terminal.",
  jobRecording: 'a recording that belongs to the job; name each by an option of its own',
  overwriteJob: 'replace a plain file of that name; never a recording',
  terminals: 'Tell from ohmmeter readings which terminal is which.',
  pinReadings:
    'two terminals and their resistance with the throttle closed and open, such as A,B=5k/5k; OL for over-range, - for not taken',
  meterError: "the ohmmeter's error, part of the reading",
  meterOhms: "the ohmmeter's constant error, leads included",
  instruments: 'Tell which instrument can show a worn spot at all, and how to set it.',
  spotTravel: 'where on the travel the spot is',
  spotWidth: 'how wide the spot is, a part of the travel',
  stroke: 'how long the hand takes from stop to stop',
  every: "how often the job's own instrument takes a sample, such as 1 ms",
  passes: 'over how many passes it is looked for',
  setClosed: 'Tell how far to turn a sensor with slotted holes for the wanted closed reading.',
  readingNow: 'the closed reading now',
  wanted: 'the closed reading that the service manual wants',
  turned: 'by how many degrees you then turned the sensor, for a second reading',
  secondReading: 'the second reading',
  uncertainty: 'standard uncertainty of each reading',
  report: 'Judge recorded sweeps and write the report: one HTML file, or Markdown.',
  out: 'the file to write',
  markdown: 'write Markdown for a work order instead of HTML',
  overwrite: 'replace a plain file of that name; never the job or a recording',
  reopen: 'Open a report, and score again what is at hand of its recordings.',
  reportFile: 'the report, an HTML file',
  recheckFiles: 'recordings that the report was made from, where it keeps no samples of them',
  plot: 'draw the sweep too, with its findings marked',
  simulate: 'Print an invented recording of the sensor of a job, to practise on.',
  wornAt: 'let the wiper lift at this travel, such as 6 %',
  wornWidth: 'how wide the worn spot is',
  interval: 'time between samples',
  noise: 'standard deviation of the noise',
  seed: 'another number makes another recording',
  completion: 'Print the completion of commands and options for a shell.',
  shell: 'bash, zsh or fish',
  json: 'print everything as JSON data instead of text',
  working: 'also show how the numbers come about, step by step',
  workingInReport: 'add how the numbers come about as an appendix',
  jsonLines: 'print each recording as a line of JSON data as soon as it is judged',
  exitByVerdict: 'leave with an exit code that tells the verdict',
  help: 'show this help',
  version: 'show the version',
  programMore: `
truesweep <command> --help shows a worked example. Instead of a file's name, -
reads the standard input.
`,
  liveMore: `
A worked example. A controller on the bench prints time, signal and supply in
counts of 10 bits, its reference 5 V; you see what comes and what is missing,
and end with q:

  truesweep live /dev/ttyACM0 --job outboard.job.json --supply-column supply \\
    --volts-per-unit 4.883mV --out port-side.csv

What another program prints, until it ends:

  logger --print | truesweep live - --job outboard.job.json --out port-side.csv

To practise, without any recorder:

  truesweep simulate --job outboard.job.json > practice.csv
  truesweep live practice.csv --job outboard.job.json --out watched.csv --idle 1s

Keys on a terminal: t when you begin and when you end flexing the harness, h
tapping the housing, w warming; q or Ctrl-C ends and judges. A file ends by
them, by --for or by --idle; what another program prints ends with it.

Lines are numbers parted by commas, semicolons, tabs, bars or spaces, as in
files; a counter of stamps may wrap. Where each ends in an asterisk and the
CRC-16 (XMODEM) of what stands before it in four hexadecimal digits, damaged
lines are told for sure. What is recorded is on the disk as it comes, whole
lines: Ctrl-C and a pulled plug lose nothing of it.
`,
  batchMore: `
A worked example. A season's recordings lie in a folder, all of one kind of
sensor on one hook-up:

  truesweep batch season --job outboard.job.json --out season-results

Or they are listed with the sensors that they are of, in season.csv:

  file,sensor,date,note
  season/port.csv,Port engine,2026-04-02,before the season
  season/starboard.csv,Starboard engine,2026-04-02,after cleaning

  truesweep batch --manifest season.csv --job outboard.job.json --out results

In the folder of --out you find
  summary.html   what needs attention first, with small traces; opens anywhere
  results.csv    a row for each recording
  results.jsonl  everything that is known of each, a JSON object a line
  journal.jsonl  the results as they came: after Ctrl-C, a full disk or a
                 power cut the same command goes on from there. What is judged
                 already, the same bytes by the same job, criteria and version
                 of truesweep, is not judged again.

Exit codes are those of score: 2 where a recording could not be judged; each
says why in the results, and the others are judged. Stopped by Ctrl-C it leaves
with 130.
`,
  historyMore: `
A worked example. Every spring the workshop's recordings are judged together,
each with its sensor and its date in the list:

  truesweep batch --manifest spring.csv --job outboard.job.json --out spring \\
    --history workshop.history

  truesweep history --store workshop.history
  truesweep history --store workshop.history --sensor "Port engine"

What was judged earlier is added by its folder; what is added twice counts once:

  truesweep history last-year/results this-year/results --store workshop.history

The history is one SQLite file. Several commands may add to it at once; it must
not lie on a network's drive. A damaged one is refused; what can be read of it:

  truesweep history --store workshop.history --save saved.jsonl

A record without a date in the list has that in its file's name, such as
2026-05-03-port.csv; without either it is kept, but has no place in a trend.
`,
  planMore: `
A worked example. The data sheet allows the wiper 1 mA, and a 12 V battery is
close by:

  truesweep plan --job outboard.job.json --wiper-current 1mA --other-source 12V
`,
  expectMore: `
A worked example. Before you record, know what to look for:

  truesweep expect --job outboard.job.json
`,
  readingsMore: `
A worked example. The job describes the coolant sensor by its service table; you
read it in ice, in warm water with a thermometer, and in boiling water:

  truesweep readings --job coolant.job.json --thermometer 0.3K \\
    ice=6.24k "21.5 °C=2.41 kΩ" boiling=184

A pressure sensor with the port open, then under a hand pump:

  truesweep readings --job manifold.job.json --supply 5.02V --meter 4mV \\
    --gauge 0.4kPa open=4.03V "10 inHg vacuum=2.53V" "18 inHg vacuum=1.31V"

Exit codes with --exit-by-verdict are those of score.
`,
  writeJobMore: `
A worked example. A sensor is on the bench for the first time; on a terminal
you are asked for the rest, with an example for each:

  truesweep write-job --out outboard.job.json

Or all at once, for a script:

  truesweep write-job --out outboard.job.json --title "Port engine" \\
    --sensor "Throttle position sensor" --track 5k --source 5V --limiter 1k \\
    --instrument "Bench logger" --input-resistance 10M --closed-at 10% \\
    --open-at 88% --closed-tolerance 2% --open-tolerance 3%
`,
  compareMore: `
A worked example. You recorded the sensor, cleaned its track, and recorded it
again on the same bench:

  truesweep compare before.csv after.csv --job outboard.job.json
`,
  terminalsMore: `
A worked example. Three terminals, marked A, B and C by you; each pair is
read with the throttle closed and then held open:

  truesweep terminals A,B=5k/5k A,C=1.3k/5.3k B,C=5.3k/1.3k
`,
  instrumentsMore: `
A worked example. The customer says that it stumbles just off idle; will your
digital meter show a spot of half a percent there, swept in three seconds?

  truesweep instruments --job outboard.job.json --travel 5% --width 0.5% --stroke 3s
`,
  setClosedMore: `
A worked example. Closed, the sensor reads 0.62 V, and 0.50 V is wanted. You
turn it by 2 degrees and read 0.70 V:

  truesweep set-closed --reading 0.62V --wanted 0.50V --turned 2 --then 0.70V
`,
  reportMore: `
A worked example. The customer wants it in writing:

  truesweep report port-side.csv --job outboard.job.json --out port-side.html
`,
  reopenMore: `
A worked example. Another workshop sent its report, and the recording with it:

  truesweep reopen port-side.html port-side.csv
`,
  simulateMore: `
A worked example. See what a worn spot just above closed looks like:

  truesweep simulate --job outboard.job.json --worn-at 6% > practice.csv
  truesweep score practice.csv --job outboard.job.json --plot
`,
  completionMore: `
A worked example, for bash:

  truesweep completion bash > ~/.local/share/bash-completion/completions/truesweep
`,
  scoreMore: `
A worked example. On the bench a 5 V supply feeds the sensor through 1 kΩ; a
logger sits on the wiper. You record while you turn the throttle slowly from
stop to stop and back three times, resting at each stop, then let it snap
shut. You write sensor, hook-up and logger into outboard.job.json and save
the recording as port-side.csv:

  truesweep score port-side.csv --job outboard.job.json

Many recordings at once, each told as soon as it is judged:

  truesweep score *.csv --job outboard.job.json --json-lines

Verdicts:
  pass          nothing speaks against the sensor; it may go back
  marginal      something shows that a second recording must settle
  fail          don't put it back as it is; the cause says what to mend
  inconclusive  the recording can't tell; it says how to record instead

Exit codes:
  0   the work was done, whatever the verdict
  1   truesweep itself failed
  2   an input was wrong: of several recordings each one that can't be judged
      says so in its place, and the others are judged; else nothing is printed
      but what was wrong
  3   the output took no more: a reader that left, or a full disk
with --exit-by-verdict, for scripts (of several files the worst verdict
counts: fail, then inconclusive, then marginal, then pass; 2 where one of them
could not be judged):
  0   pass      10  marginal      11  fail      12  inconclusive
`,
} as const satisfies Record<string, string>;

/**
 * Said by the command line where nothing tells how often a job's own instrument takes a sample.
 *
 * @example
 * intervalTakenSentence('logger', '4 ms').includes('--every') // => true
 */
export function intervalTakenSentence(name: string, interval: string): string {
  return say`How often “${name}” samples is not told: it is taken to do so every ${interval}, the slowest that shows the spot surely. Tell how often it does by --every, such as 1 ms.`;
}

/**
 * Said by the command line where ratings were not given that a limiting resistor is chosen by.
 *
 * @example
 * giveRatingsSentence(['wiper']) // => 'Give the ratings of the data sheet by --wiper-current, such as 1 mA.'
 */
export function giveRatingsSentence(parts: readonly (keyof RatingChecks)[]): string {
  listOf(checkText)(parts, 'parts');
  const options = parts.flatMap((part) => ratingOptions[part] ?? []);
  const listed =
    options.length < 2
      ? options.join('')
      : say`${options.slice(0, -1).join(', ')}, and ${options.at(-1)!}`;
  return say`Give the ratings of the data sheet by ${listed}.`;
}

/**
 * Refused: a rating without a unit.
 *
 * @example
 * ratingWithoutUnitSentence('--wiper-current', '5', 'A') // => '--wiper-current is "5", without a unit: write “5 mA” or “5 A”, whichever the data sheet means.'
 */
export function ratingWithoutUnitSentence(option: string, text: string, unit: 'A' | 'W'): string {
  checkText(option, 'option');
  checkText(text, 'text');
  return say`${option} is ${JSON.stringify(text)}, without a unit: write “${text} m${unit}” or “${text} ${unit}”, whichever the data sheet means.`;
}

const ratingOptions: Readonly<Partial<Record<keyof RatingChecks, string>>> = {
  track: '--track-power, such as 0.2 W',
  wiper: '--wiper-current, such as 1 mA',
  source: '--source-current, such as 100 mA',
};

/**
 * Refused: neither files nor a job that lists any.
 *
 * @example
 * nothingToScoreSentence.includes('the job lists none') // => true
 */
export const nothingToScoreSentence =
  'No recording is named, and the job lists none; name the files to judge.';

/**
 * Refused: files beside a job whose readings stand in it.
 *
 * @example
 * readingsInJobSentence('winding').includes('stand in the job') // => true
 */
export function readingsInJobSentence(kind: string): string {
  return say`A job of the kind “${kind}” has no sweeps to name: its readings stand in the job, or are typed in with “readings”.`;
}

/**
 * Refused: files beside a report of single readings, which holds them all.
 *
 * @example
 * noFilesWithReadingsSentence.includes('holds its readings') // => true
 */
export const noFilesWithReadingsSentence =
  'A report of single readings holds its readings; name no recordings beside it.';

/**
 * Refused: a shell that no completion is written for.
 *
 * @example
 * unknownShellSentence('sh') // => 'There is no completion for "sh"; name bash, zsh or fish.'
 */
export function unknownShellSentence(shell: string): string {
  checkText(shell, 'shell');
  return say`There is no completion for ${JSON.stringify(shell)}; name bash, zsh or fish.`;
}

/**
 * What the standard input is called where a file's name would stand.
 *
 * @example
 * standardInputName // => 'standard input'
 */
export const standardInputName = 'standard input';

/** What is read of an input where no option says more, bytes: 1 GB. */
export const usualLargest: number = 2 ** 30;

/**
 * Refused: an input that is larger than is read.
 *
 * @param limit The limit as it is written, such as 1 GB.
 * @param wanted What would be enough, as it is written; a size such as the limit's double where it isn't known.
 *
 * @example
 * tooLargeSentence('1 GB', '2 GB') // => 'It holds more than 1 GB, as much as is read; name only what is to be judged, or have more read with --largest "2 GB".'
 */
export function tooLargeSentence(limit: string, wanted: string): string {
  return say`It holds more than ${limit}, as much as is read; name only what is to be judged, or have more read with --largest "${wanted}".`;
}

/**
 * Refused: what is read as a job without an end.
 *
 * @example
 * noJobSentence.includes('16 MB') // => true
 */
export const noJobSentence =
  'It holds more than 16 MB, and no job is that large; name the file that holds the job.';

/**
 * Refused: what is no size of a file.
 *
 * @example
 * notASizeSentence('much').includes('such as 4 GB') // => true
 */
export function notASizeSentence(text: string): string {
  checkText(text, 'text');
  return say`--largest is ${JSON.stringify(text)}; it must be a size above 0 in KB, MB or GB, such as 4 GB.`;
}

/**
 * Said of an input that gives nothing yet.
 *
 * @param what What is waited for: a recording, a job, a report.
 * @param where What it was to come from: the standard input, or a file.
 *
 * @example
 * waitingSentence('a recording', 'the standard input') // => 'waiting for a recording on the standard input …'
 */
export function waitingSentence(what: string, where: string): string {
  return say`waiting for ${what} on ${where} …`;
}

/**
 * Refused: `-` for more than one input.
 *
 * @example
 * oneInputSentence.includes('only once') // => true
 */
export const oneInputSentence =
  'The standard input can be read only once; name files for all inputs but one.';

/**
 * Stands where the verdict of a recording would stand that could not be judged.
 *
 * @example
 * notJudgedLabel // => 'NOT JUDGED'
 */
export const notJudgedLabel = 'NOT JUDGED';

/** So many files are named in a sentence. */
const mostNamed = 5;

/**
 * Said beside the verdicts of several recordings where some have none; names the first of them.
 *
 * @example
 * notJudgedSentence(['b.csv'], 4) // => '1 of 4 recordings was not judged: b.csv.'
 * notJudgedSentence(['a', 'b', 'c', 'd', 'e', 'f'], 9) // => '6 of 9 recordings were not judged: a, b, c, d, e and 1 more.'
 */
export function notJudgedSentence(files: readonly string[], count: number): string {
  listOf(checkText)(files, 'files');
  const more = files.length - mostNamed;
  const names = files.slice(0, mostNamed).join(', ') + (more > 0 ? say` and ${more} more` : '');
  return say`${files.length} of ${count} recordings ${files.length === 1 ? 'was' : 'were'} not judged: ${names}.`;
}

/**
 * Refused: to write over what is read.
 *
 * @example
 * outputIsInputSentence('port.csv').includes('port.csv') // => true
 */
export function outputIsInputSentence(input: string): string {
  return say`Nothing was written: this is ${input}, which it is made from or names; name another file to write.`;
}

/**
 * Said where the standard output takes no more.
 *
 * @example
 * brokenOutputSentence('ENOSPC').includes('(ENOSPC)') // => true
 */
export function brokenOutputSentence(reason: string): string {
  return say`What was to be printed could not be written (${reason}); make room, or print elsewhere.`;
}

/** Where a person at a terminal gives the options that the library speaks of. */
const optionsHint = 'Options stand in the job, with the recording: "text": { … }.';

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
  return whole(refusal, 'refusal', () => {
    const { path, place, sentence, code } = refusal;
    const where = place ? say`${path}, line ${place.line}, column ${place.column}` : path;
    const hint = /\bby the options? /.test(sentence) ? say` ${optionsHint}` : '';
    return say`${where}: ${sentence}${hint} (${code})`;
  });
}

/**
 * Words of a sweep drawn with characters.
 *
 * @example
 * plotWords.marks.includes('numbers') // => true
 */
export const plotWords = {
  title: 'Reading (V) over time',
  marks: 'The numbers below the curve are those of the findings, in their order.',
} as const;
