import { InputError } from '@truesweep/core';
import { type DelimitedOptions, delimitedReader, readDelimited } from '@truesweep/recordings';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../counts.js';

/** One way to write a table of times and voltages. */
interface Dialect {
  readonly delimiter: ',' | ';' | '\t' | '|' | ' ';
  readonly decimal: '.' | ',';
  readonly lineEnd: '\n' | '\r\n' | '\r';
  readonly time: 's' | 'ms' | 'µs';
  readonly signal: 'V' | 'mV';
  /** Units in brackets after the names, in a row of their own, or told by options. */
  readonly units: 'in headings' | 'in a row' | 'told';
  readonly preamble: readonly string[];
  readonly quoted: boolean;
  readonly encoding: 'utf-8' | 'utf-8 with mark' | 'utf-16le' | 'utf-16be' | 'latin-1';
  readonly lastLineEnds: boolean;
}

const powers = { s: 0, ms: 3, µs: 6, V: 0, mV: 3 } as const;

/** A decimal of so many millionths, its point moved to the right for smaller units: the same number in another unit. */
function written(millionths: number, power: number, decimal: string): string {
  const digits = String(Math.abs(millionths)).padStart(7, '0');
  const whole = digits.slice(0, digits.length - 6 + power).replace(/^0+(?=.)/, '');
  const rest = digits.slice(digits.length - 6 + power);
  return `${millionths < 0 ? '-' : ''}${whole}${rest && decimal + rest}`;
}

type Sample = readonly [timeMillionths: number, signalMillionths: number];

/** The file of a dialect, and the options that it takes to read it. */
function fileOf(samples: readonly Sample[], dialect: Dialect) {
  const { delimiter, decimal, lineEnd, time, signal, units, preamble, quoted } = dialect;
  const cell = (text: string): string => (quoted ? `"${text}"` : text);
  const line = (...cells: readonly string[]): string => cells.map(cell).join(delimiter);
  const headings = {
    'in headings': [line(`time(${time})`, `wiper(${signal})`)],
    'in a row': [line('time', 'wiper'), line(time, signal)],
    told: [],
  }[units];
  const rows = samples.map(([t, v]) =>
    line(written(t, powers[time], decimal), written(v, powers[signal], decimal)),
  );
  const text =
    [...preamble, ...headings, ...rows].join(lineEnd) + (dialect.lastLineEnds ? lineEnd : '');
  const told: DelimitedOptions =
    units === 'told' ? { timeUnit: time, signalUnit: signal, delimiter, decimal } : {};
  return { bytes: encoded(text, dialect.encoding), told };
}

function encoded(text: string, encoding: Dialect['encoding']): Uint8Array {
  if (encoding === 'latin-1') return Uint8Array.from(text, (one) => one.charCodeAt(0));
  if (encoding === 'utf-8') return new TextEncoder().encode(text);
  if (encoding === 'utf-8 with mark') return new TextEncoder().encode(`\uFEFF${text}`);
  const marked = `\uFEFF${text}`;
  const view = new DataView(new ArrayBuffer(2 * marked.length));
  for (let i = 0; i < marked.length; i++)
    view.setUint16(2 * i, marked.charCodeAt(i), encoding === 'utf-16le');
  return new Uint8Array(view.buffer);
}

/** What every dialect is read to: the doubles nearest to the decimals, V and s. */
function reference(samples: readonly Sample[]) {
  const column = (which: 0 | 1): Float64Array =>
    Float64Array.from(samples, (sample) => Number(written(sample[which], 0, '.')));
  return { time: column(0), signal: column(1) };
}

const plain: Dialect = {
  delimiter: ',',
  decimal: '.',
  lineEnd: '\n',
  time: 's',
  signal: 'V',
  units: 'in headings',
  preamble: [],
  quoted: false,
  encoding: 'utf-8',
  lastLineEnds: true,
};

const preambles: readonly (readonly string[])[] = [
  [],
  ['Bench recorder, harbour workshop'],
  ['# port side', '# second try', ''],
  ['Recorded on the bench', '', 'Channels: 1', 'Remarks: none', '', ''],
];

/** Every dialect that differs from a comma-separated one in one thing or in two. */
const table: readonly (readonly [string, Dialect])[] = (() => {
  const changes: readonly Partial<Dialect>[] = [
    { delimiter: ';' },
    { delimiter: '\t' },
    { delimiter: '|' },
    { delimiter: ' ' },
    { delimiter: ';', decimal: ',' },
    { delimiter: '\t', decimal: ',' },
    { lineEnd: '\r\n' },
    { lineEnd: '\r' },
    { time: 'ms' },
    { time: 'µs' },
    { signal: 'mV' },
    { units: 'in a row' },
    { units: 'told' },
    { preamble: preambles[1]! },
    { preamble: preambles[2]! },
    { preamble: preambles[3]! },
    { quoted: true },
    { encoding: 'utf-8 with mark' },
    { encoding: 'utf-16le' },
    { encoding: 'utf-16be' },
    { encoding: 'latin-1' },
    { lastLineEnds: false },
  ];
  const pairs = changes.flatMap((one, i) =>
    changes
      .slice(i + 1)
      .filter((other) => Object.keys(other).every((key) => !(key in one)))
      .map((other) => ({ ...one, ...other })),
  );
  return [...changes, ...pairs].map((change) => [JSON.stringify(change), { ...plain, ...change }]);
})();

const sweep: readonly Sample[] = [
  [0, 512_000],
  [1500, 517_250],
  [3000, 1_234_567],
  [4500, -3],
  [1_000_004, 4_999_999],
];

describe('a table of dialects', () => {
  test('is large', () => expect(table.length).toBeGreaterThan(200));

  test.each(table)('%s is read to the same sweep, to the last bit', (_, dialect) => {
    const { bytes, told } = fileOf(sweep, dialect);
    const read = readDelimited(bytes, told);
    expect(read.sweep).toEqual(reference(sweep));
    if (dialect.units !== 'told') expect(read.reading.delimiter).toBe(dialect.delimiter);
  });
});

const dialects = fc.record({
  delimiter: fc.constantFrom(',', ';', '\t', '|', ' '),
  decimal: fc.constantFrom('.', ','),
  lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
  time: fc.constantFrom('s', 'ms', 'µs'),
  signal: fc.constantFrom('V', 'mV'),
  units: fc.constantFrom('in headings', 'in a row', 'told'),
  preamble: fc.constantFrom(...preambles),
  quoted: fc.boolean(),
  encoding: fc.constantFrom('utf-8', 'utf-8 with mark', 'utf-16le', 'utf-16be', 'latin-1'),
  lastLineEnds: fc.boolean(),
}) as fc.Arbitrary<Dialect>;

const samples = fc
  .array(fc.tuple(fc.nat({ max: 10_000_000 }), fc.integer({ min: -20_000_000, max: 20_000_000 })), {
    minLength: 2,
    maxLength: 40,
  })
  .map((list) => {
    let at = 0;
    return list.map(([step, signal]): Sample => {
      at += step;
      return [at, signal];
    });
  });

test('a random sweep in a random dialect is read to the same numbers, where its commas and points have one reading', () => {
  fc.assert(
    fc.property(samples, dialects, (list, dialect) => {
      fc.pre(dialect.delimiter !== ',' || dialect.decimal === '.');
      const { bytes, told } = fileOf(list, dialect);
      // Points of small units can part thousands, as commas can.
      const isTold = dialect.decimal === ',' || dialect.signal !== 'V' || dialect.time !== 's';
      const decimal = isTold ? { decimal: dialect.decimal } : {};
      const read = readDelimited(bytes, { ...told, ...decimal, delimiter: dialect.delimiter });
      expect(read.sweep).toEqual(reference(list));
    }),
    { numRuns: 500 * soak },
  );
});

/** Damage: bytes changed, cut out, doubled. */
const damage = fc.array(
  fc.tuple(fc.constantFrom('change', 'cut', 'double'), fc.nat(), fc.nat({ max: 255 })),
  { minLength: 1, maxLength: 6 },
);

function damaged(
  bytes: Uint8Array,
  hits: readonly (readonly [string, number, number])[],
): Uint8Array {
  let list = Array.from(bytes);
  for (const [kind, place, byte] of hits) {
    const at = place % Math.max(1, list.length);
    if (kind === 'change') list[at] = byte;
    else if (kind === 'cut') list = list.slice(0, at).concat(list.slice(at + 1 + (byte % 20)));
    else list = list.slice(0, at).concat(list.slice(Math.max(0, at - byte), at), list.slice(at));
  }
  return Uint8Array.from(list);
}

/** Reads, or is refused with a place; what is read is finite and in order. */
function readOrRefused(bytes: Uint8Array): void {
  try {
    const { sweep: read } = readDelimited(bytes);
    expect(read.time.length).toBe(read.signal.length);
    expect([...read.time, ...read.signal].every(Number.isFinite)).toBe(true);
    expect(read.time.every((at, i) => i === 0 || at >= read.time[i - 1]!)).toBe(true);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    expect(error.place).toBeDefined();
  }
}

test('a damaged file is read or refused, and nothing else', () => {
  fc.assert(
    fc.property(samples, dialects, damage, (list, dialect, hits) => {
      readOrRefused(damaged(fileOf(list, dialect).bytes, hits));
    }),
    { numRuns: Math.min(50_000, 3000 * soak) },
  );
});

/** The recording, or what is said of it. */
function said(read: () => unknown): unknown {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.message;
  }
}

test('a file cut into pieces anywhere is read, or refused, as the whole one is', () => {
  const cuts = fc.array(fc.nat(), { maxLength: 8 });
  const lines = fc.constantFrom(1, 1, 6000);
  fc.assert(
    fc.property(
      samples,
      dialects,
      damage,
      fc.boolean(),
      cuts,
      lines,
      (list, dialect, hits, isWhole, at, more) => {
        const last = list.at(-1)!;
        const long = [
          ...list,
          ...Array.from({ length: more }, (_, i): Sample => [last[0] + 7 * i, last[1]]),
        ];
        const { bytes: made, told } = fileOf(long, { ...dialect, delimiter: ';' });
        const bytes = isWhole ? made : damaged(made, hits);
        const options = { ...told, delimiter: ';', decimal: dialect.decimal } as const;
        const inPieces = said(() => {
          const reader = delimitedReader(options);
          const places = [...at.map((place) => place % (bytes.length + 1)), bytes.length];
          let from = 0;
          for (const to of places.sort((one, other) => one - other)) {
            reader.feed(bytes.subarray(from, to));
            from = to;
          }
          return reader.end();
        });
        expect(inPieces).toEqual(said(() => readDelimited(bytes, options)));
      },
    ),
    { numRuns: 300 * soak },
  );
});

/** What comes of a text: the sweep, or the code and the line of the refusal. */
function outcome(text: string, delimiter: Dialect['delimiter']): unknown {
  try {
    return readDelimited(text, { delimiter, decimal: '.' }).sweep;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { code: error.code, line: error.place?.line };
  }
}

test('a row read straight through is what it is field by field, whole or damaged', () => {
  const cell = fc.oneof(
    { weight: 12, arbitrary: fc.integer({ min: 0, max: 99_999 }).map((n) => String(n / 1000)) },
    fc.constantFrom('', ' ', '-', '-0.5', '+1', '1e2', '.5', '5.', '0.1.2', '"3"', 'OL', 'x'),
    fc.constantFrom('123456789012345', '1234567890123456', '0.00000000000000000000001'),
  );
  const delimiter = fc.constantFrom(',', ';', '\t', '|', ' ' as const);
  const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { maxLength: 4 });
  fc.assert(
    fc.property(delimiter, fc.integer({ min: 2, max: 4 }), rows, (sign, columns, more) => {
      const heading = ['a', 'b', 't(s)', 'U(V)'].slice(4 - columns).join(sign);
      const whole = [0, 1, 2].map((t) => [...[7, 8].slice(4 - columns), t, t / 2].join(sign));
      const lines = [heading, ...whole, ...more.map((cells) => cells.join(sign))];
      // A space at the end of every line changes nothing, and no such row is read straight through.
      const straight = outcome(`${lines.join('\n')}\n`, sign);
      expect(straight).toEqual(outcome(`${lines.join(' \n')} \n`, sign));
    }),
    { numRuns: 2000 * soak },
  );
});

test.each([
  ['one endless line', '1,'.repeat(500_000)],
  ['one endless word', 'a'.repeat(1_000_000)],
  ['deep quotes', '"'.repeat(1_000_000)],
  ['quotes that never close', `t,V\n${'"0,1\n'.repeat(200_000)}`],
  ['nothing but line ends', '\n'.repeat(1_000_000)],
])('%s ends, one way or the other', (_, text) => {
  readOrRefused(new TextEncoder().encode(text));
});

test('an archive under a wrong name is no text', () => {
  const archive = Uint8Array.of(0x50, 0x4b, 0x03, 0x04, ...new Uint8Array(1000));
  expect(() => readDelimited(archive)).toThrow(expect.objectContaining({ code: 'binary-file' }));
});
