import { realpath } from 'node:fs/promises';
import { dirname, extname, join, relative, resolve, sep } from 'node:path';
import { InputError, isInputError } from '@truesweep/core';
import type { JobRecording } from '@truesweep/jobs';
import { filePieces, hashedPieces, loadJob, readFileBytes } from '@truesweep/jobs/node';
import { openQueue, type RecordingQueue } from '../queue/openQueue.js';
import {
  eitherPlaceSentence,
  nothingToPutSentence,
  outsideSentence,
  putBrokenSentence,
  putSentence,
} from '../queueWords.js';
import { RedisFault } from '../redis/redisFault.js';
import { isObjectName } from '../storage/objectName.js';
import type { Storage } from '../storage/storage.js';
import { StorageFault } from '../storage/storageFault.js';
import { openStorage } from '../storage/storagePlace.js';
import type { Output } from './output.js';
import { bytesOf, secondsOf, wholeOf } from './quantities.js';
import { recordingsBelow } from './recordingsBelow.js';
import { queueOf, type RedisOptions } from './redisOptions.js';

export interface PutOptions extends RedisOptions {
  readonly job: string;
  readonly folder?: string;
  readonly bucket?: string;
  readonly endpoint?: string;
  readonly region?: string;
  readonly largest: string;
  readonly sensor?: string;
  readonly date?: string;
  readonly note?: string;
  readonly tries: string;
  readonly pause: string;
}

/** So many are put at once: each waits for its file and twice for Redis. */
const atOnce = 16;

/** A recording with what the job says of how it is read. */
type Placed = Parameters<RecordingQueue['put']>[0]['recording'];

/**
 * Puts recordings, and prints how many.
 *
 * @returns The exit code.
 * @throws InputError for options or a job that are wrong; RedisFault or StorageFault with what was put by then.
 */
export async function putRecordings(
  paths: readonly string[],
  options: PutOptions,
  { env, print, tell }: Output,
): Promise<number> {
  const { redis, name } = queueOf(options, env);
  const tries = wholeOf(options.tries, '--tries', 1, 100);
  const pause = secondsOf(options.pause, '--pause');
  const largest = bytesOf(options.largest, '--largest');
  const placed = placer(options, largest, env);
  const job = await loadJob(options.job);
  const listed = new Map(
    (job.recordings ?? []).map((one) => [resolve(dirname(options.job), one.file), one]),
  );
  const queue = await openQueue({ redis, name, tries, pause });
  const counts = { added: 0, waiting: 0, parked: 0, refused: 0 };
  let broken: unknown;
  const put = async (path: string): Promise<void> => {
    try {
      const { sensor, date, note } = options;
      const recording = await placed(path, listed.get(resolve(path)));
      const told = { sensor, date, note };
      const facts = Object.fromEntries(
        Object.entries(told).filter(([, text]) => text !== undefined),
      );
      const file = recording.in === 'folder' ? recording.name : path;
      counts[await queue.put({ recording, file, ...facts }, job)] += 1;
    } catch (error) {
      if (!isInputError(error)) {
        broken ??= error;
        return;
      }
      counts.refused += 1;
      tell(`${error.path}: ${error.message} (${error.code})`);
    }
  };
  const running = new Set<Promise<void>>();
  try {
    for (const path of paths) {
      for await (const file of recordingsBelow(path)) {
        while (running.size >= atOnce) await Promise.race(running);
        if (broken !== undefined) break;
        const work = put(file).finally(() => running.delete(work));
        running.add(work);
      }
    }
  } finally {
    await Promise.all(running);
    await queue.close();
  }
  const { added, waiting, parked, refused } = counts;
  if (broken instanceof RedisFault || broken instanceof StorageFault) {
    tell(putBrokenSentence(broken.message, added + waiting));
    return 1;
  }
  if (broken !== undefined) throw broken;
  if (added + waiting + parked + refused === 0) {
    throw new InputError('nothing-to-score', 'put', nothingToPutSentence);
  }
  print(`${putSentence(counts)}\n`);
  return refused > 0 ? 2 : 0;
}

/** What finds out where the workers will find a recording: its path in the shared folder, or its place in the bucket that it is sent to. */
function placer(
  { folder, bucket, endpoint, region }: PutOptions,
  largest: number,
  env: NodeJS.ProcessEnv,
): (path: string, listed: JobRecording | undefined) => Promise<Placed> {
  if ((folder === undefined) === (bucket === undefined)) {
    throw new InputError('missing', '--folder', eitherPlaceSentence);
  }
  if (folder !== undefined) return (path, listed) => inFolder(path, folder, listed);
  const storage = openStorage(bucket!, '--bucket', { endpoint, region }, env);
  return (path, listed) => sent(path, storage, largest, listed);
}

async function inFolder(
  path: string,
  folder: string,
  listed: JobRecording | undefined,
): Promise<Placed> {
  const name = relative(folder, path).split(sep).join('/');
  const inside = await realpath(folder).catch(() => resolve(folder));
  const real = await realpath(path).catch(() => join(inside, name));
  if (!isObjectName(name) || !real.startsWith(inside + sep)) {
    throw new InputError('not-a-name', path, outsideSentence(folder));
  }
  const hashed = hashedPieces(filePieces(path));
  for await (const _ of hashed.pieces);
  return { in: 'folder', name, ...hashed.identity(), ...readAsOf(listed) };
}

async function sent(
  path: string,
  storage: Storage,
  most: number,
  listed: JobRecording | undefined,
): Promise<Placed> {
  const bytes = await readFileBytes(path, { most });
  const hashed = hashedPieces(onePiece(bytes));
  for await (const _ of hashed.pieces);
  const { sha256 } = hashed.identity();
  // By what it holds: the same is sent once, and nothing is written over.
  const name = `recordings/${sha256.slice(0, 2)}/${sha256}${extname(path).toLowerCase()}`;
  await storage.write(
    isObjectName(name) ? name : `recordings/${sha256.slice(0, 2)}/${sha256}`,
    bytes,
  );
  return { in: 'bucket', name, bytes: bytes.length, sha256, ...readAsOf(listed) };
}

async function* onePiece(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

function readAsOf(listed: JobRecording | undefined): Pick<Placed, 'readAs'> {
  const { text, sound, stretches } = listed ?? {};
  const readAs = {
    ...(text !== undefined && { text }),
    ...(sound !== undefined && { sound }),
    ...(stretches !== undefined && { stretches }),
  };
  return Object.keys(readAs).length > 0 ? { readAs } : {};
}
