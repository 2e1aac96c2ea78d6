import { createHash, createHmac, timingSafeEqual } from 'node:crypto';
import { once } from 'node:events';
import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';

/** A small object store that speaks as much of S3's interface as a queue needs, and believes no request whose signature it does not come to by itself. */
export interface ObjectStore {
  readonly endpoint: string;
  readonly keyId: string;
  readonly keySecret: string;
  /** What it holds, by bucket and name. */
  readonly objects: Map<string, Buffer>;
  /** Requests so far, such as `PUT results/results/ab/….json 200`. */
  readonly log: string[];
  /** Answers with this status from now on, whatever is asked; 0 where it works again. */
  fail: (status: number) => void;
  readonly close: () => Promise<void>;
}

/** Starts one at a free port of 127.0.0.1 with buckets of these names. */
export async function objectStore(
  keySecret: string,
  ...buckets: readonly string[]
): Promise<ObjectStore> {
  const keyId = 'BENCHKEY';
  const objects = new Map<string, Buffer>();
  const log: string[] = [];
  let failing = 0;
  const server = createServer(async (request, response) => {
    const pieces: Buffer[] = [];
    for await (const piece of request) pieces.push(piece);
    const body = Buffer.concat(pieces);
    const { method = '', url = '' } = request;
    const answer = (status: number, code = '', content: string | Buffer = '') => {
      log.push(`${method} ${decodeURIComponent(url.slice(1))} ${status}`);
      const error = `<?xml version="1.0"?><Error><Code>${code}</Code><Message>no</Message></Error>`;
      const text = code === '' ? content : error;
      response
        .writeHead(status, { 'content-length': Buffer.byteLength(text) })
        .end(method === 'HEAD' ? '' : text);
    };
    if (failing > 0) return answer(failing, failing === 503 ? 'SlowDown' : 'InternalError');
    const wrong = wrongOf(request, body, keyId, keySecret);
    if (wrong) return answer(403, wrong);
    const path = decodeURIComponent(url.slice(1).split('?')[0]!);
    if (!buckets.includes(path.split('/')[0]!)) return answer(404, 'NoSuchBucket');
    const there = objects.get(path);
    switch (method) {
      case 'GET':
      case 'HEAD':
        return there ? answer(200, '', there) : answer(404, 'NoSuchKey');
      case 'PUT':
        if (there && request.headers['if-none-match'] === '*')
          return answer(412, 'PreconditionFailed');
        objects.set(path, body);
        return answer(200);
      case 'DELETE':
        objects.delete(path);
        return answer(204);
      default:
        return answer(405, 'MethodNotAllowed');
    }
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  return {
    endpoint: `http://127.0.0.1:${port}`,
    keyId,
    keySecret,
    objects,
    log,
    fail: (status) => {
      failing = status;
    },
    async close() {
      server.closeAllConnections();
      server.close();
      await once(server, 'close');
    },
  };
}

const sha256 = (data: string | Buffer) => createHash('sha256').update(data).digest('hex');
const hmac = (key: string | Buffer, data: string) =>
  createHmac('sha256', key).update(data).digest();

/**
 * The code of what is wrong with a request's signature, version 4: written after “Authenticating Requests (AWS Signature Version 4)” in the Amazon S3 API Reference,
 * from memory, and apart from the library that signs.
 */
function wrongOf(
  { method = '', url = '', headers }: IncomingMessage,
  body: Buffer,
  keyId: string,
  keySecret: string,
): string | undefined {
  const [, credential = '', signed = '', signature = ''] =
    /^AWS4-HMAC-SHA256 Credential=([^,]+), ?SignedHeaders=([^,]+), ?Signature=([0-9a-f]{64})$/.exec(
      headers.authorization ?? '',
    ) ?? [];
  const [id, day = '', region = '', service = '', end] = credential.split('/');
  if (id !== keyId) return 'InvalidAccessKeyId';
  const time = String(headers['x-amz-date'] ?? '');
  const [, y, mo, d, h, mi, s] = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z$/.exec(time) ?? [];
  const sent = Date.parse(`${y}-${mo}-${d}T${h}:${mi}:${s}Z`);
  if (!(Math.abs(Date.now() - sent) < 15 * 60_000)) return 'RequestTimeTooSkewed';
  const names = signed.split(';');
  const isSound =
    time.startsWith(day) && service === 's3' && end === 'aws4_request' && names.includes('host');
  if (!isSound) return 'AccessDenied';
  const hash = String(headers['x-amz-content-sha256'] ?? '');
  if (hash !== sha256(body)) return 'XAmzContentSHA256Mismatch';
  const [path = '', query = ''] = url.split('?');
  const canonical = [
    method,
    path,
    query.split('&').toSorted().join('&'),
    ...names.map((name) => `${name}:${String(headers[name] ?? '').trim()}`),
    '',
    signed,
    hash,
  ].join('\n');
  const toSign = [
    'AWS4-HMAC-SHA256',
    time,
    [day, region, service, end].join('/'),
    sha256(canonical),
  ].join('\n');
  const key = [day, region, service, end as string].reduce<string | Buffer>(
    (from, part) => hmac(from, part),
    `AWS4${keySecret}`,
  );
  const right = hmac(key, toSign);
  return timingSafeEqual(right, Buffer.from(signature, 'hex'))
    ? undefined
    : 'SignatureDoesNotMatch';
}
