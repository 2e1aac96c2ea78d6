import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
};

/** What was packed, by the file's path, with the contents it was packed from: a test may write a newer version of a file. */
type Packed = Map<string, { readonly body: Buffer; readonly packed: Buffer }>;

function packedOf(known: Packed, file: string, body: Buffer): Buffer {
  const found = known.get(file);
  if (found?.body.equals(body)) return found.packed;
  const packed = gzipSync(body);
  known.set(file, { body, packed });
  return packed;
}

/** Serves a folder of static files below `base` on a free port; a path that ends in `/` is its index.html. */
export async function serve(
  folder: string,
  base: string,
): Promise<{ server: Server; url: string }> {
  const known: Packed = new Map();
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const file = normalize(path.endsWith('/') ? `${path}index.html` : path).replaceAll('\\', '/');
    const body = file.startsWith(base)
      ? await readFile(join(folder, file.slice(base.length))).catch(() => undefined)
      : undefined;
    const type = types[extname(file)] ?? 'application/octet-stream';
    // As a host of static files does it; what is packed already stays as it is.
    const packs =
      /text|json|svg|wasm/.test(type) && /gzip/.test(`${request.headers['accept-encoding']}`);
    response.writeHead(body ? 200 : 404, {
      'content-type': type,
      ...(body && packs && { 'content-encoding': 'gzip' }),
    });
    response.end(body && packs ? packedOf(known, file, body) : (body ?? 'not found'));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  if (!address || typeof address === 'string') throw new Error('The test server has no port.');
  return { server, url: `http://127.0.0.1:${address.port}${base}` };
}
