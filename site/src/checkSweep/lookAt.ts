import { drawingEnvelope, envelopeColumns, formatQuantity, InputError } from '@truesweep/core';
import { TraceDrawing, traceColumns } from '@truesweep/drawings';
import type { NamedFile } from '@truesweep/jobs';
import {
  type DelimitedReading,
  delimitedReader,
  isSound,
  readSound,
  type SoundReading,
} from '@truesweep/recordings';
import {
  extentSentence,
  foreignFileSentence,
  howRead,
  refusalSentence,
  soundAsksSentence,
} from '@truesweep/wording';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { foreignFile } from './foreignFile.js';
import type { Look, ReadBy } from './protocol.js';

/** So many lines show how a file is written. */
const firstLines = 6;
/** So much of a file is looked at for them, bytes. */
const headBytes = 4096;
/** No more of a file's fields are shown. */
const mostFields = 12;

/**
 * What a file holds and how it is read: its first lines as they are written, the columns with their units, how many samples over which
 * time, and all of them as a small drawing; or why it can't be read, with the lines by which that can be mended.
 *
 * @param read What was told of how it is read.
 * @param id Begins the ids of the drawing, and `width` is its width, px.
 */
export function lookAt({ name, bytes }: NamedFile, read: ReadBy, id: string, width: number): Look {
  const foreign = foreignFile(name, bytes);
  if (foreign) {
    const refusal = foreignFileSentence(name, foreign);
    return { name, isSound: false, lines: [], headings: [], read: { refusal } };
  }
  const sounds = isSound(bytes);
  const lines = sounds ? [] : linesOf(bytes);
  const look = { name, isSound: sounds, lines, headings: headingsOf(lines) };
  try {
    if (sounds && !read.sound) return { ...look, read: { refusal: soundAsksSentence } };
    const { sweep, reading } =
      sounds && read.sound
        ? readSound(bytes, { ...read.sound, name })
        : readText(bytes, { ...read.text, name });
    const { time, signal } = sweep;
    const [start, last] = [time[0] ?? 0, time.at(-1) ?? 0];
    const end = Math.max(last, start + 1e-6);
    const envelope = drawingEnvelope(time, signal);
    const columns = { start, end, ...envelopeColumns(envelope, start, end, traceColumns(width)) };
    const whole = envelopeColumns(envelope, start, end, 1);
    const interval = (last - start) / Math.max(1, time.length - 1);
    const text = (value: number, unit: 's' | 'V' | 'Hz') =>
      formatQuantity(value, unit, { digits: 3, trim: true });
    return {
      ...look,
      read: {
        ...columnsOf(reading),
        howRead: howRead(reading),
        extent: extentSentence({
          samples: String(time.length),
          seconds: text(last - start, 's'),
          ...(interval > 0 && { rate: text(1 / interval, 'Hz') }),
          low: text(whole.low[0] ?? 0, 'V'),
          high: text(whole.high[0] ?? 0, 'V'),
        }),
        svg: renderToString(h(TraceDrawing, { id: id, columns, findings: [], width })),
      },
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { path, place, message, code } = error;
    return {
      ...look,
      read: { refusal: refusalSentence({ path, place, sentence: message, code }) },
    };
  }
}

function readText(bytes: Uint8Array, options: Parameters<typeof delimitedReader>[0]) {
  const reader = delimitedReader(options, bytes.length);
  reader.feed(bytes);
  return reader.end();
}

function columnsOf(reading: DelimitedReading | SoundReading) {
  if ('coding' in reading) return { signalColumn: reading.signalChannel };
  const { time, signal } = reading.columns;
  return {
    ...(time && { timeColumn: time.index, timeUnit: time.unit }),
    signalColumn: signal.index,
    signalUnit: signal.unit,
  };
}

/** The first lines with something in them, parted where most of them have most fields. */
function linesOf(bytes: Uint8Array): readonly (readonly string[])[] {
  const head = bytes.subarray(0, headBytes);
  const is16 = head[0] === 0xff && head[1] === 0xfe;
  const text = new TextDecoder(is16 ? 'utf-16le' : 'utf-8').decode(head);
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '');
  // The last one may be cut.
  const whole = bytes.length > headBytes ? lines.slice(0, -1) : lines;
  const rows = whole.filter(isNumbers);
  const signs = ['\t', ';', '|', ',', ' '] as const;
  const sign = signs.find((one) => (rows[0] ?? whole[0] ?? '').trim().includes(one));
  const firstRow = Math.max(0, rows[0] === undefined ? 0 : whole.indexOf(rows[0]));
  const from = Math.max(0, firstRow - 2);
  return whole.slice(from, from + firstLines).map((line) =>
    line
      .trim()
      .split(sign === undefined ? '\n' : sign === ' ' ? / +/ : sign)
      .slice(0, mostFields)
      .map((field) => field.trim().replace(/^"(.*)"$/, '$1')),
  );
}

const isNumbers = (line: string): boolean =>
  /^[\s"+−-]*[.,]?\d/.test(line) && !/[a-df-z]{2}/i.test(line);

/** The line before the numbers, where it has as many fields as they. */
function headingsOf(lines: readonly (readonly string[])[]): readonly string[] {
  const first = lines.findIndex((fields) => isNumbers(fields.join(' ')));
  const [row, before] = [lines[first], lines[first - 1]];
  if (!row) return [];
  return before?.length === row.length ? before : row.map(() => '');
}
