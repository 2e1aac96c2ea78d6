import { createHash } from 'node:crypto';
import { AwsClient } from 'aws4fetch';
import {
  bucketFaultSentence,
  missingObjectSentence,
  objectTooLargeSentence,
} from '../queueWords.js';
import { isObjectName } from './objectName.js';
import type { Storage } from './storage.js';
import { StorageFault } from './storageFault.js';

/** A bucket of an object store that speaks S3's interface. */
export interface BucketPlace {
  /** Where the store answers, such as `https://objects.example:9000`; no path, no secret. */
  readonly endpoint: string;
  /** The region that requests are signed for; `us-east-1` when left out, which most stores of one's own take. */
  readonly region?: string;
  /** The bucket's name. */
  readonly bucket: string;
  /** What all names begin with, without slashes around it; nothing when left out. */
  readonly prefix?: string;
  /** Name of the access key. */
  readonly keyId: string;
  /** The secret of the access key. It is never sent, and told in no error. */
  readonly keySecret: string;
  /** Goes with keys that are lent for a while; left out for others. */
  readonly sessionToken?: string;
  /** So long may a store be silent before a request is given up, s, above 0; 30 s when left out. */
  readonly patience?: number;
}

/** Slower than this counts as silence while an object is sent, bytes per second. */
const slowest = 65_536;

/**
 * A bucket as storage. An object is there whole or not at all, as S3's interface promises; it is written under the condition that there is none of its
 * name (`If-None-Match: *`), so that of several writers one makes it. A store that knows no conditions lets the later of two writers win, with an object
 * as whole.
 *
 * @example
 * const place = { endpoint: 'http://127.0.0.1:9', bucket: 'results', keyId: 'bench', keySecret: 'unguessed' };
 * const fault = await bucketStorage(place).has('a.json').catch((error) => error);
 * fault.code // => 'unreachable'
 * fault.message.includes('unguessed') // => false
 */
export function bucketStorage(place: BucketPlace): Storage {
  const { endpoint, region = 'us-east-1', bucket, prefix, patience = 30 } = place;
  const label = `s3://${[bucket, ...(prefix ? [prefix] : [])].join('/')}`;
  const client = new AwsClient({
    accessKeyId: place.keyId,
    secretAccessKey: place.keySecret,
    ...(place.sessionToken !== undefined && { sessionToken: place.sessionToken }),
    service: 's3',
    region,
    // The queue tries again.
    retries: 0,
  });

  const urlOf = (name: string): string => {
    if (!isObjectName(name)) throw new TypeError(`${JSON.stringify(name)} names no object.`);
    const parts = [bucket, ...(prefix ? prefix.split('/') : []), ...name.split('/')];
    return `${endpoint.replace(/\/+$/, '')}/${parts.map(strictlyEncoded).join('/')}`;
  };
  const unreachable = (reason: string) =>
    new StorageFault('unreachable', bucketFaultSentence(label, reason));
  /** Asks the store, and takes its answer while it comes. */
  const ask = async <Result>(
    name: string,
    method: string,
    take: (response: Response, alive: () => void) => Promise<Result>,
    body?: Uint8Array,
  ): Promise<Result> => {
    const url = urlOf(name);
    const given = new AbortController();
    const seconds = patience + (body?.length ?? 0) / slowest;
    const timer = setTimeout(() => given.abort(), 1000 * seconds);
    try {
      const response = await client.fetch(url, {
        method,
        redirect: 'manual',
        signal: given.signal,
        headers: {
          'x-amz-content-sha256': createHash('sha256')
            .update(body ?? '')
            .digest('hex'),
          ...(body && { 'if-none-match': '*', 'content-type': 'application/octet-stream' }),
        },
        // A view of a shared buffer is no body of a request.
        ...(body && { body: new Uint8Array(body) }),
      });
      return await take(response, () => timer.refresh());
    } catch (error) {
      if (error instanceof StorageFault) throw error;
      throw unreachable(given.signal.aborted ? 'timeout' : reasonOf(error));
    } finally {
      clearTimeout(timer);
    }
  };
  const refused = async (response: Response): Promise<StorageFault> =>
    unreachable(await reasonIn(response));

  return {
    label,
    read: (name, most) =>
      ask(name, 'GET', async (response, alive) => {
        const tooLarge = () => new StorageFault('too-large', objectTooLargeSentence(name, most));
        if (response.status === 404) {
          const reason = await reasonIn(response);
          if (reason === 'NoSuchBucket') throw unreachable(reason);
          throw new StorageFault('missing', missingObjectSentence(name, label));
        }
        if (response.status !== 200) throw await refused(response);
        if (Number(response.headers.get('content-length')) > most) throw tooLarge();
        const pieces: Uint8Array[] = [];
        let bytes = 0;
        for await (const piece of response.body ?? []) {
          alive();
          bytes += piece.length;
          if (bytes > most) throw tooLarge();
          pieces.push(piece);
        }
        return Buffer.concat(pieces, bytes);
      }),
    write: (name, bytes) =>
      ask(
        name,
        'PUT',
        async (response) => {
          if (response.status === 412) return false;
          if (response.status !== 200 && response.status !== 204) throw await refused(response);
          return true;
        },
        bytes,
      ),
    has: (name) =>
      ask(name, 'HEAD', async (response) => {
        if (response.status === 404) return false;
        if (response.status !== 200) throw await refused(response);
        return true;
      }),
    remove: (name) =>
      ask(name, 'DELETE', async (response) => {
        if (![200, 204, 404].includes(response.status)) throw await refused(response);
      }),
  };
}

/** As RFC 3986 wants it, and the signature with it. */
function strictlyEncoded(part: string): string {
  return encodeURIComponent(part).replace(
    /[!'()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );
}

/** The store's own word for what it refuses, else the number of its answer. */
async function reasonIn(response: Response): Promise<string> {
  const text = await response.text().catch(() => '');
  return /<Code>([A-Za-z]{1,60})<\/Code>/.exec(text)?.[1] ?? String(response.status);
}

function reasonOf(error: unknown): string {
  const cause = error instanceof Error ? (error.cause ?? error) : error;
  if (cause instanceof Error && 'code' in cause) return String(cause.code);
  return cause instanceof Error ? cause.name : 'unknown';
}
