import { checkFields, checkText, InputError, isInputError, scoreSweep } from '@truesweep/core';
import { checkPath, checkSize, namedRules } from './checkInput.js';
import { checkRecording } from './checkRecording.js';
import { hashedPieces } from './hashedPieces.js';
import type { RecordingIdentity } from './identifyRecording.js';
import type { Job, JobRecording } from './job.js';
import type { JudgedRecording, RecordingFacts, RecordingResult } from './judgedRecording.js';
import { judgementBasis } from './judgementBasis.js';
import { judgementKey } from './judgementKey.js';
import { nearestLimit } from './nearestLimit.js';
import { knownJob } from './parseJob.js';
import { readJobPieces } from './readJobPieces.js';
import { openRecording, type RecordingFile } from './recordingFile.js';
import { shown } from './refusal.js';
import { roughness } from './roughness.js';
import { smallTrace } from './smallTrace.js';
import { version } from './version.js';
import { worstPlace } from './worstPlace.js';

/** What is told of a recording that is judged by itself. */
export interface JudgeOptions {
  /** What it is filed as; its path when left out, which bytes have none of. */
  readonly file?: string;
  /** Which sensor was recorded; the name in the job when left out. */
  readonly sensor?: string;
  /** When it was recorded: any text; not told when left out. */
  readonly date?: string;
  /** What else is to be kept with it; nothing when left out. */
  readonly note?: string;
  /** What the job says of this recording, where the caller knows which of the job's it is; found by the hash of its bytes, if at all, when left out. */
  readonly recording?: Omit<JobRecording, 'file'>;
  /** A file of more bytes than this, 0 or more, is refused; 1 GB (2³⁰ bytes) when left out. */
  readonly most?: number;
}

/** The same for who keeps results. */
export interface KeptOptions extends JudgeOptions {
  /** Asked whether there is a result of this key already, before anything is judged. */
  readonly isKept: (key: string) => boolean | Promise<boolean>;
}

const any = () => {};

/**
 * Judges one recording by a job, and says what came of it as plain data with a key. What is wrong with the recording is a result too, so that a
 * queue is never held up by it; a wrong job or option is thrown.
 *
 * The bytes are gone through twice: for their hash, which tells what is judged, and to be read. Where the second time they are others, because
 * something writes to the file, it is refused as `recording-changed`, and no key is told.
 *
 * @param source Path of a plain file, from the working directory, or the bytes of one.
 * @param job What it is judged by; read by `loadJob` or `parseJob` it is worked out once for all its recordings.
 * @param options With `isKept` nothing is judged that there is a result of, and nothing returned.
 * @returns The judged recording, or why it could not be.
 * @throws InputError for a job or options that are wrong, or a hook-up without an output.
 *
 * @example
 * import { loadJob } from '@truesweep/jobs/node';
 * const job = await loadJob('examples/outboard-sensor.job.json');
 * const worn = await judgeOne('examples/recordings/worn.csv', job, { sensor: 'Port engine' });
 * worn.verdict // => 'fail'
 * worn.worst.kind // => 'dropout'
 * worn.sensor // => 'Port engine'
 * const lost = await judgeOne('examples/recordings/lost.csv', job);
 * lost.refused.code // => 'missing-file'
 */
export function judgeOne(
  source: string | Uint8Array,
  job: Job,
  options?: JudgeOptions,
): Promise<RecordingResult>;
export function judgeOne(
  source: string | Uint8Array,
  job: Job,
  options: KeptOptions,
): Promise<RecordingResult | undefined>;
export async function judgeOne(
  source: string | Uint8Array,
  givenJob: Job,
  options: JudgeOptions & Partial<KeptOptions> = {},
): Promise<RecordingResult | undefined> {
  checkSource(source);
  checkOptions(options);
  const job = knownJob(givenJob);
  judgementBasis(job);
  const facts = factsOf(source, job, options);
  const refuse = (error: unknown, told: Told = {}) => refusedOf(error, facts, told);
  let opened: RecordingFile;
  try {
    opened = openedOf(source, options.most ?? 2 ** 30);
  } catch (error) {
    return refuse(error);
  }
  try {
    return await judge(opened, job, facts, options);
  } catch (error) {
    return refuse(error);
  } finally {
    opened.close();
  }
}

/** What is known of a recording that is refused. */
type Told = Partial<RecordingIdentity> & { readonly key?: string };

async function judge(
  { pieces }: RecordingFile,
  job: Job,
  facts: RecordingFacts,
  { recording, isKept }: JudgeOptions & Partial<KeptOptions>,
): Promise<RecordingResult | undefined> {
  const { file } = facts;
  const identity = await identityOf(pieces());
  const listed =
    recording ?? job.recordings?.find(({ sha256 }) => sha256 === identity.sha256) ?? {};
  checkRecording({ ...listed, file }, identity);
  const key = judgementKey(identity.sha256, job, listed);
  if (await isKept?.(key)) return undefined;
  const hashed = hashedPieces(pieces());
  try {
    const read = await readJobPieces(hashed.pieces, { ...listed, file }, job, {
      size: identity.bytes,
    });
    refuseOther(identity, hashed.identity(), file);
    const { expected, criteria } = judgementBasis(job);
    const score = scoreSweep(read.sweep, expected, read.recorder, criteria);
    return { key, ...facts, ...identity, ...told(score, read), version, judgedAt: now() };
  } catch (error) {
    if (!isInputError(error) || error.code === 'recording-changed') throw error;
    // It was let go of at the first sign, before its end.
    refuseOther(identity, await identityOf(pieces()), file);
    return refusedOf(error, facts, { key, ...identity });
  }
}

type Read = Awaited<ReturnType<typeof readJobPieces>>;

/** What is kept of a score. */
function told(
  score: ReturnType<typeof scoreSweep>,
  { sweep, reading }: Read,
): Omit<
  JudgedRecording,
  keyof RecordingFacts | keyof RecordingIdentity | 'key' | 'version' | 'judgedAt'
> {
  const { verdict, confidence, causes, advice, findings, abrupt, checks, quality } = score;
  const { hysteresis } = score.closedReadings;
  const [closed, open] = (['closed-end', 'open-end'] as const).map((end) => {
    const { measured, uncertainty } = checks.find(({ check }) => check === end) ?? {};
    if (measured === undefined) return undefined;
    return { volts: measured, ...(uncertainty !== undefined && { uncertainty }) };
  });
  const worst = worstPlace(score);
  const nearest = nearestLimit(checks);
  return {
    verdict,
    ...(confidence !== undefined && { confidence }),
    causes,
    advice,
    ...(closed && { closed }),
    ...(open && { open }),
    noise: quality.noise,
    visible: quality.visible,
    ...(worst && { worst }),
    ...(hysteresis !== undefined && { hysteresis }),
    roughness: roughness(score),
    findings: (abrupt ?? findings).length,
    ...(nearest && { nearest }),
    checks,
    quality,
    reading,
    trace: smallTrace(sweep),
  };
}

function refusedOf(
  error: unknown,
  facts: RecordingFacts,
  { key, ...identity }: Told,
): RecordingResult {
  if (!isInputError(error)) throw error;
  const { code, path, place, message: sentence } = error;
  const refused = { code, path, ...(place && { place }), sentence };
  return {
    ...(key !== undefined && { key }),
    ...facts,
    ...identity,
    refused,
    version,
    judgedAt: now(),
  };
}

function now(): string {
  return new Date().toISOString();
}

function openedOf(source: string | Uint8Array, most: number): RecordingFile {
  if (typeof source === 'string') return openRecording(source, most);
  return { pieces: () => onePiece(source), close: () => {} };
}

async function* onePiece(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

async function identityOf(pieces: AsyncIterable<Uint8Array>): Promise<RecordingIdentity> {
  const hashed = hashedPieces(pieces);
  for await (const _ of hashed.pieces);
  return hashed.identity();
}

function refuseOther(before: RecordingIdentity, after: RecordingIdentity, file: string): void {
  if (before.sha256 === after.sha256) return;
  const wrong = `The file changed while it was read (${before.bytes} bytes before, ${after.bytes} bytes after); it was not judged. Wait until it is written, then judge it again.`;
  throw new InputError('recording-changed', file, wrong);
}

function factsOf(
  source: string | Uint8Array,
  job: Job,
  { file, sensor, date, note }: JudgeOptions,
): RecordingFacts {
  const name = file ?? (typeof source === 'string' ? source : undefined);
  checkText(name, 'options.file');
  return {
    file: name,
    job: job.title,
    sensor: sensor ?? job.sensor.name,
    ...(date !== undefined && { date }),
    ...(note !== undefined && { note }),
  };
}

function checkSource(source: unknown): void {
  if (source instanceof Uint8Array) return;
  if (typeof source === 'string') {
    checkPath(source);
    return;
  }
  throw new InputError(
    source === undefined ? 'missing' : 'not-bytes',
    'source',
    `source is ${shown(source)}; it must be the path of a recording, or its bytes as a Uint8Array.`,
  );
}

function checkOptions(options: unknown): void {
  const { file: _, ...listed } = namedRules;
  checkFields(options, 'options', {
    'file?': checkText,
    'sensor?': checkText,
    'date?': checkText,
    'note?': checkText,
    'recording?': listed,
    'most?': checkSize,
    'isKept?': any,
  });
}
