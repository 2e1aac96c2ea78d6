import { InputError } from '@truesweep/core';
import { shown } from './shown.js';

/** Where a recording comes from piece by piece: a stream of the web or of Node, or a file in a browser. */
export type RecordingSource = ReadableStream<Uint8Array> | AsyncIterable<Uint8Array> | Blob;

/** The pieces of a recording. A stream is let go of where reading ends early. */
export async function* piecesOf(source: RecordingSource): AsyncGenerator<Uint8Array> {
  if (!isSource(source)) {
    throw new InputError(
      source === undefined || source === null ? 'missing' : 'not-bytes',
      'source',
      `source is ${shown(source)}; it must be a stream of bytes, an async iterable of Uint8Arrays, or a Blob.`,
    );
  }
  if (Symbol.asyncIterator in source) {
    yield* source as AsyncIterable<Uint8Array>;
    return;
  }
  // Not every browser can iterate a stream.
  const reader = (source instanceof Blob ? source.stream() : source).getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      yield value;
    }
  } finally {
    await reader.cancel();
  }
}

function isSource(value: unknown): value is RecordingSource {
  if (typeof value !== 'object' || value === null) return false;
  return Symbol.asyncIterator in value || value instanceof Blob || 'getReader' in value;
}
