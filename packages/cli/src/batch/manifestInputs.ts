import { dirname, isAbsolute, join } from 'node:path';
import { InputError, nearestName } from '@truesweep/core';
import { filePieces } from '@truesweep/jobs/node';
import {
  manifestFieldSentence,
  manifestFileSentence,
  manifestLineSentence,
  manifestTextSentence,
} from '@truesweep/wording';
import type { BatchInput } from './batchInput.js';
import { csvRows } from './csvRows.js';

/** What a manifest may tell of a recording. */
const fields = ['file', 'job', 'sensor', 'date', 'note'] as const;
type Field = (typeof fields)[number];

/** No line of a manifest is longer, characters. */
const longest = 2 ** 20;

/**
 * The recordings of a manifest, read as they are asked for: lines of JSON objects, or comma-separated values under headings. A line that is wrong is
 * a recording that can't be judged, named by its place; the others are read all the same.
 *
 * @throws InputError for a manifest that can't be read, or whose headings are wrong.
 */
export async function* manifestInputs(path: string): AsyncGenerator<BatchInput> {
  const lines = textLines(path);
  const { value: first = '', done } = await lines.next();
  const whole = (async function* () {
    if (!done) yield first;
    yield* lines;
  })();
  yield* first.trimStart().startsWith('{') ? jsonInputs(whole, path) : csvInputs(whole, path);
}

async function* jsonInputs(lines: AsyncIterable<string>, path: string): AsyncGenerator<BatchInput> {
  let line = 0;
  for await (const text of lines) {
    line += 1;
    if (text.trim() !== '') yield await placed(path, line, () => inputOf(jsonOf(text, path), path));
  }
}

async function* csvInputs(lines: AsyncIterable<string>, path: string): AsyncGenerator<BatchInput> {
  let headings: readonly string[] | undefined;
  for await (const { line, cells } of csvRows(lines, path)) {
    if (!headings) {
      headings = cells.map((cell) => cell.toLowerCase());
      for (const name of headings) checkField(name, path);
      if (!headings.includes('file')) {
        throw new InputError('missing', path, manifestFileSentence, { line, column: 1 });
      }
      continue;
    }
    const named = headings.map((name, i) => [name, cells[i] ?? ''] as const);
    const told = Object.fromEntries(named.filter(([, value]) => value !== ''));
    yield await placed(path, line, () => inputOf(told, path));
  }
}

/** What a line tells; where it is wrong, a recording that can't be judged. */
async function placed(path: string, line: number, read: () => BatchInput): Promise<BatchInput> {
  try {
    return { ...read(), line };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const refusal = new InputError(error.code, path, error.message, { line, column: 1 });
    return { file: `${path}, line ${line}`, refusal };
  }
}

function jsonOf(text: string, path: string): object {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    value = undefined;
  }
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value;
  throw new InputError('not-json', path, manifestLineSentence);
}

function inputOf(told: object, path: string): BatchInput {
  for (const [name, value] of Object.entries(told)) {
    checkField(name, path);
    if (typeof value !== 'string') {
      throw new InputError('not-a-text', path, manifestTextSentence(name));
    }
  }
  const { file = '', job, ...rest } = told as Partial<Record<Field, string>>;
  if (file === '') throw new InputError('missing', path, manifestFileSentence);
  const fromHere = (other: string) => (isAbsolute(other) ? other : join(dirname(path), other));
  return { ...rest, file: fromHere(file), ...(job !== undefined && { job: fromHere(job) }) };
}

function checkField(name: string, path: string): void {
  if ((fields as readonly string[]).includes(name)) return;
  throw new InputError(
    'unknown-field',
    path,
    manifestFieldSentence(name, fields, nearestName(name, fields)),
  );
}

/** The lines of a text in UTF-8, without their ends. */
async function* textLines(path: string): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let held = '';
  const decoded = (piece?: Uint8Array): string => {
    try {
      return piece ? decoder.decode(piece, { stream: true }) : decoder.decode();
    } catch {
      throw new InputError('not-utf-8', path, 'The file is no text in UTF-8; save it as such.');
    }
  };
  for await (const piece of filePieces(path)) {
    const lines = (held + decoded(piece)).split(/\r?\n/);
    held = lines.pop() ?? '';
    if (held.length > longest) throw new InputError('endless-line', path, manifestLineSentence);
    yield* lines;
  }
  held += decoded();
  if (held !== '') yield held.replace(/\r$/, '');
}
