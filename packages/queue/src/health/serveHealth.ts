import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { InputError } from '@truesweep/core';
import { addressInUseSentence, wrongListenSentence } from '../queueWords.js';

/** What is told of a worker. */
export interface HealthSources {
  /** Whether it takes recordings: Redis answers, and it was not told to end. Else why not. */
  readonly isReady: () => Promise<true | string>;
  /** Its figures for Prometheus. */
  readonly metrics: () => Promise<string>;
}

/** A server of a worker's health. */
export interface HealthServer {
  /** Where it is, such as `127.0.0.1:9718`. */
  readonly address: string;
  readonly close: () => void;
}

/**
 * Tells a worker's health at `/healthz` (it runs), `/readyz` (it takes recordings) and its figures at `/metrics`, to who asks at this address alone.
 *
 * @param listen Address and port, such as `127.0.0.1:9718`.
 * @throws InputError where nothing can listen there.
 */
export async function serveHealth(listen: string, sources: HealthSources): Promise<HealthServer> {
  const [, bracketed, plain, port] =
    /^(?:\[([0-9a-f:.]+)\]|([\w.-]+)):(\d{1,5})$/i.exec(listen) ?? [];
  const host = bracketed ?? plain;
  if (host === undefined || Number(port) > 65_535) {
    throw new InputError('not-a-name', '--listen', wrongListenSentence);
  }
  const answer = async (path: string, response: ServerResponse): Promise<void> => {
    const tell = (status: number, text: string, type = 'text/plain; charset=utf-8') =>
      response.writeHead(status, { 'content-type': type, 'cache-control': 'no-store' }).end(text);
    switch (path) {
      case '/healthz':
        return void tell(200, 'ok\n');
      case '/readyz': {
        const ready = await sources.isReady();
        return void (ready === true ? tell(200, 'ok\n') : tell(503, `${ready}\n`));
      }
      case '/metrics':
        return void tell(200, await sources.metrics(), 'text/plain; version=0.0.4; charset=utf-8');
      default:
        return void tell(404, 'There are /healthz, /readyz and /metrics.\n');
    }
  };
  const server = createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { allow: 'GET, HEAD' }).end();
      return;
    }
    const [path = ''] = (request.url ?? '').split('?');
    answer(path, response).catch(() => response.writeHead(500).end());
  });
  server.headersTimeout = 5000;
  server.requestTimeout = 5000;
  server.maxConnections = 64;
  await new Promise<void>((resolve, reject) => {
    server.once('error', ({ code = 'unknown' }: NodeJS.ErrnoException) =>
      reject(new InputError('cannot-write', '--listen', addressInUseSentence(listen, code))),
    );
    server.listen(Number(port), host, resolve);
  });
  // It ends with the worker, and doesn't keep it.
  server.unref();
  const { address, family, port: taken } = server.address() as AddressInfo;
  return {
    address: family === 'IPv6' ? `[${address}]:${taken}` : `${address}:${taken}`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
