const lineFeed = 0x0a;
const carriageReturn = 0x0d;
const space = 0x20;
const tab = 0x09;
const quote = 0x22;

/** Where the fields of one line lie; one object serves every line, so that no row allocates. */
export interface FieldBounds {
  /** First byte of each field and the byte after its last, without quotes and outer spaces. */
  readonly starts: Float64Array;
  readonly ends: Float64Array;
  /** How many fields the line has; those beyond the arrays' length are counted only. */
  count: number;
  /** The number of the last field that is not empty. */
  used: number;
  /** The end of the line and the start of the next. */
  end: number;
  next: number;
}

/**
 * Finds the fields of the line that begins at `lineStart`. A field that begins with a quote ends at
 * the next single quote; a line ends at LF, CR LF or CR, even inside quotes. A run of spaces as the
 * delimiter counts once.
 */
export function scanFields(
  bytes: Uint8Array,
  lineStart: number,
  delimiter: number,
  bounds: FieldBounds,
): void {
  bounds.count = 0;
  bounds.used = 0;
  let at = lineStart;
  for (;;) {
    at = skipBlanks(bytes, at, delimiter);
    if (delimiter === space && bounds.count > 0 && isLineEnd(bytes, at)) break;
    const end = fieldEnd(bytes, at, delimiter);
    keepField(bytes, at, end, bounds);
    at = end;
    if (bytes[at] !== delimiter) break;
    at += 1;
  }
  bounds.end = at;
  bounds.next = at + (bytes[at] === carriageReturn && bytes[at + 1] === lineFeed ? 2 : 1);
}

function isLineEnd(bytes: Uint8Array, at: number): boolean {
  const byte = bytes[at];
  return byte === undefined || byte === lineFeed || byte === carriageReturn;
}

function skipBlanks(bytes: Uint8Array, start: number, delimiter: number): number {
  let at = start;
  while (bytes[at] === space || (bytes[at] === tab && delimiter !== tab)) at += 1;
  return at;
}

function fieldEnd(bytes: Uint8Array, start: number, delimiter: number): number {
  let at = bytes[start] === quote ? closingQuote(bytes, start) : start;
  for (; at < bytes.length; at++) {
    const byte = bytes[at];
    if (byte === delimiter || byte === lineFeed || byte === carriageReturn) break;
  }
  return at;
}

/** The closing quote of a quoted field, or its opening one where the line ends before. */
function closingQuote(bytes: Uint8Array, start: number): number {
  for (let at = start + 1; !isLineEnd(bytes, at); at++) {
    if (bytes[at] !== quote) continue;
    if (bytes[at + 1] !== quote) return at;
    at += 1;
  }
  return start;
}

function keepField(bytes: Uint8Array, start: number, end: number, bounds: FieldBounds): void {
  let from = start;
  let to = end;
  while (to > from && (bytes[to - 1] === space || bytes[to - 1] === tab)) to -= 1;
  if (to - from >= 2 && bytes[from] === quote && bytes[to - 1] === quote) {
    from += 1;
    to -= 1;
  }
  if (bounds.count < bounds.starts.length) {
    bounds.starts[bounds.count] = from;
    bounds.ends[bounds.count] = to;
  }
  bounds.count += 1;
  if (to > from) bounds.used = bounds.count;
}

const decoder = new TextDecoder();

/** The text of a field of the line that was scanned. */
export function fieldText(bytes: Uint8Array, { starts, ends }: FieldBounds, index: number): string {
  return decoder.decode(bytes.subarray(starts[index], ends[index]));
}
