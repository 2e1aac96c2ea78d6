import { InputError } from '@truesweep/core';
import { shown } from './shown.js';

/**
 * Where a recording comes from piece by piece: a stream of the web (`ReadableStream`) or of Node, any other async iterable of bytes, or a file
 * in a browser (`File`, `Blob`). These are told by what is used of them, so that no program needs the types of a page or of Node.
 */
export type RecordingSource = ByteStream | AsyncIterable<Uint8Array> | ByteFile;

/** What is used of a stream of the web. */
interface ByteStream {
  getReader(): {
    /** The next piece, or that there is none. */
    read(): Promise<
      | {
          readonly done: false;
          /** Its bytes; there may be none. */
          readonly value: Uint8Array;
        }
      | { readonly done: true }
    >;
    cancel(): Promise<void>;
  };
}

/** What is used of a file in a browser. */
interface ByteFile {
  /** How many bytes it has, 0 or more; not known when left out. */
  readonly size?: number;
  stream(): ByteStream;
}

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
    yield* source;
    return;
  }
  // Not every browser can iterate a stream.
  const reader = ('getReader' in source ? source : source.stream()).getReader();
  try {
    for (;;) {
      const piece = await reader.read();
      if (piece.done) return;
      yield piece.value;
    }
  } finally {
    await reader.cancel();
  }
}

/** How many bytes a recording has, where its source tells that beforehand. */
export function sizeOf(source: RecordingSource): number | undefined {
  return isSource(source) && 'stream' in source ? source.size : undefined;
}

function isSource(value: unknown): value is RecordingSource {
  if (typeof value !== 'object' || value === null) return false;
  return Symbol.asyncIterator in value || value instanceof Blob || 'getReader' in value;
}
