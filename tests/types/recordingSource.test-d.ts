import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
import type { ReadableStream as NodeStream } from 'node:stream/web';
import { type RecordingSource, readRecording } from '@truesweep/recordings';
import { expectTypeOf, test } from 'vitest';

test('a recording comes from what pages and Node have', () => {
  expectTypeOf<Blob>().toExtend<RecordingSource>();
  expectTypeOf<File>().toExtend<RecordingSource>();
  expectTypeOf<ReadableStream<Uint8Array>>().toExtend<RecordingSource>();
  expectTypeOf<NonNullable<Response['body']>>().toExtend<RecordingSource>();
  expectTypeOf<NodeStream<Uint8Array>>().toExtend<RecordingSource>();
  expectTypeOf(Readable.from([])).toExtend<RecordingSource>();
  expectTypeOf(createReadStream('idle.csv')).toExtend<RecordingSource>();
  expectTypeOf<AsyncGenerator<Uint8Array>>().toExtend<RecordingSource>();
});

test('it comes from nothing else', () => {
  expectTypeOf<string>().not.toExtend<RecordingSource>();
  expectTypeOf<Uint8Array>().not.toExtend<RecordingSource>();
  expectTypeOf<ReadableStream<string>>().not.toExtend<RecordingSource>();
  expectTypeOf(readRecording).parameter(0).toEqualTypeOf<RecordingSource>();
});
