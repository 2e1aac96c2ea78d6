import { InputError, parseQuantity } from '@truesweep/core';
import type {
  DecimalSign,
  DelimitedOptions,
  Delimiter,
  SignalUnit,
  TimeUnit,
} from '@truesweep/recordings';
import { notADurationSentence, notARateSentence, recordedSentence } from '@truesweep/wording';
import { badInputCode, exitCodeOf } from '../exitCodes.js';
import { jobBounds } from '../inputBounds.js';
import { judgeFiles } from '../judgeFiles.js';
import { layOut } from '../layOut.js';
import { notJudgedText } from '../notJudgedText.js';
import { readJobInput } from '../readInput.js';
import type { Output } from '../terminal.js';
import { paragraph } from '../textPart.js';
import { unjudgedFile } from '../unjudgedFile.js';
import { chooseSource } from './chooseSource.js';
import { inFlags } from './inFlags.js';
import { watcherOf } from './watcherOf.js';
import { watchLive } from './watchLive.js';

/** What is told of a running recording, as typed. */
export interface LiveOptions {
  readonly job: string;
  readonly out?: string;
  readonly baud?: string;
  readonly timeColumn?: string;
  readonly signalColumn?: string;
  readonly supplyColumn?: string;
  readonly timeUnit?: string;
  readonly signalUnit?: string;
  readonly voltsPerUnit?: string;
  readonly rate?: string;
  readonly delimiter?: string;
  readonly decimal?: string;
  readonly for?: string;
  readonly idle?: string;
  readonly short?: true;
  readonly json?: true;
  readonly exitByVerdict?: true;
}

/**
 * Records what a source gives, saves it with its job, judges it as a file and prints the answer.
 *
 * @returns The exit code.
 */
export async function recordLive(
  name: string | undefined,
  options: LiveOptions,
  output: Output,
): Promise<number> {
  const job = await readJobInput(options.job, jobBounds(output));
  const text = textOptions(options);
  const rate = options.baud === undefined ? undefined : rateOf(options.baud);
  const source = await chooseSource(name, rate, text);
  const file = options.out ?? fileName(new Date());
  const jobFile = `${file.replace(/\.[^./\\]*$/, '')}.job.json`;
  const longest = seconds(options.for, '--for');
  const idle = seconds(options.idle, '--idle');
  const watcher = watcherOf(output);
  try {
    const { samples, reading } = await watchLive(
      {
        job,
        source,
        text,
        isRateTold: rate !== undefined,
        file,
        jobFile,
        ...(longest !== undefined && { longest }),
        ...(idle !== undefined && { idle }),
      },
      watcher,
    );
    const saved = recordedSentence({ ...reading, file, job: jobFile, samples });
    output.printError(layOut(['', paragraph(saved), ''], output));
  } catch (error) {
    throw inFlags(error);
  } finally {
    watcher.end();
  }
  return await judgeSaved(file, jobFile, options, output);
}

async function judgeSaved(
  file: string,
  jobFile: string,
  { short, json, exitByVerdict }: LiveOptions,
  output: Output,
): Promise<number> {
  const { answers } = await judgeFiles([file], { job: jobFile }, output);
  const writer = json
    ? (await import('../jsonAnswers.js')).jsonAnswers(output)
    : (await import('../textAnswers.js')).textAnswers(output, { short: short ?? false });
  for await (const answer of answers) {
    writer.write(answer);
    writer.end();
    if (!('refusal' in answer)) return exitByVerdict ? exitCodeOf([answer.score.verdict]) : 0;
    output.printError(notJudgedText([unjudgedFile(answer)], 1));
  }
  return badInputCode;
}

function textOptions(options: LiveOptions): DelimitedOptions {
  const { timeColumn, signalColumn, supplyColumn, timeUnit, signalUnit, voltsPerUnit } = options;
  const { rate, delimiter, decimal } = options;
  return {
    ...(timeColumn !== undefined && { timeColumn: column(timeColumn) }),
    ...(signalColumn !== undefined && { signalColumn: column(signalColumn) }),
    ...(supplyColumn !== undefined && { supplyColumn: column(supplyColumn) }),
    ...(timeUnit !== undefined && { timeUnit: timeUnit.replace(/^us$/, 'µs') as TimeUnit }),
    ...(signalUnit !== undefined && { signalUnit: signalUnit as SignalUnit }),
    ...(voltsPerUnit !== undefined && {
      voltsPerUnit: parseQuantity(voltsPerUnit, 'V', '--volts-per-unit'),
    }),
    ...(rate !== undefined && { sampleRate: parseQuantity(rate, 'Hz', '--rate') }),
    ...(decimal !== undefined && { decimal: decimal as DecimalSign }),
    ...(delimiter !== undefined && { delimiter: delimiter.replace('\\t', '\t') as Delimiter }),
  };
}

/** A column by its number, counted from 0, or by its heading. */
function column(text: string): number | string {
  return /^\d+$/.test(text) ? Number(text) : text;
}

function seconds(text: string | undefined, option: string): number | undefined {
  if (text === undefined) return undefined;
  const value = parseQuantity(text, 's', option);
  if (value > 0) return value;
  throw new InputError('out-of-range', option, notADurationSentence(option, text));
}

/** Slower than any, and faster than any controller's: baud. */
const [slowest, fastest] = [50, 12_000_000];

function rateOf(text: string): number {
  const rate = Number(text);
  if (Number.isInteger(rate) && rate >= slowest && rate <= fastest) return rate;
  throw new InputError('out-of-range', '--baud', notARateSentence(text, slowest, fastest));
}

/** A name that sorts by time, of the local clock. */
function fileName(date: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const day = [date.getFullYear(), two(date.getMonth() + 1), two(date.getDate())].join('-');
  const time = [date.getHours(), date.getMinutes(), date.getSeconds()].map(two).join('');
  return `sweep-${day}-${time}.csv`;
}
