import { InputError } from '@truesweep/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkedLine } from '../../../tests/controller/checkedLine.js';
import { soak } from '../../../tests/counts.js';
import { type DelimitedOptions, type Delimiter, delimiters } from './delimitedOptions.js';
import { delimitedReader } from './delimitedReader.js';
import { readDelimited } from './readDelimited.js';
import { samplesOf } from './samplesOf.js';

function refusal(input: string | Uint8Array, options: DelimitedOptions = {}): InputError {
  try {
    readDelimited(input, { name: 'bench.csv', ...options });
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('The file was read');
}

describe('readDelimited', () => {
  // Every file holds the same three samples: 0 s 0.512 V, 0.0015 s 1.25 V, 0.003 s 4.5 V.
  const files: [
    string,
    string,
    Partial<{ delimiter: string; decimal: string; headerLines: number }>,
  ][] = [
    [
      'commas',
      'time,voltage\n0,0.512\n0.0015,1.25\n0.003,4.5\n',
      { delimiter: ',', decimal: '.', headerLines: 1 },
    ],
    ['no final line end', 'time,voltage\n0,0.512\n0.0015,1.25\n0.003,4.5', { headerLines: 1 }],
    ['no headings', '0,0.512\n0.0015,1.25\n0.003,4.5\n', { delimiter: ',', headerLines: 0 }],
    ['commas and spaces', 't (s), U (V)\n0, 0.512\n0.0015, 1.25\n0.003, 4.5\n', { delimiter: ',' }],
    [
      'semicolons, decimal comma',
      'time;voltage\n0,0000;0,512\n0,0015;1,25\n0,003;4,5\n',
      { delimiter: ';', decimal: ',' },
    ],
    [
      'semicolons, decimal comma, no headings',
      '0;0,512\n0,0015;1,25\n0,003;4,5\n',
      { delimiter: ';', decimal: ',' },
    ],
    ['tabs', 'time\tvoltage\n0\t0.512\n0.0015\t1.25\n0.003\t4.5\n', { delimiter: '\t' }],
    [
      'tabs, decimal comma',
      'time\tvoltage\n0\t0,512\n0,0015\t1,25\n0,003\t4,5\n',
      { delimiter: '\t', decimal: ',' },
    ],
    ['bars', 'time|voltage\n0|0.512\n0.0015|1.25\n0.003|4.5\n', { delimiter: '|' }],
    [
      'spaces',
      'time (ms)  voltage (V)\n   0    0.512\n   1.5  1.25 \n   3    4.5\n',
      { delimiter: ' ' },
    ],
    [
      'spaces, decimal comma',
      't U\n0,0 0,512\n0,0015 1,25\n0,003 4,5\n',
      { delimiter: ' ', decimal: ',' },
    ],
    [
      'a byte order mark',
      '\ufefftime (ms),voltage (mV)\n0,512\n1.5,1250\n3,4500\n',
      { headerLines: 1 },
    ],
    ['CR LF', 'time,voltage\r\n0,0.512\r\n0.0015,1.25\r\n0.003,4.5\r\n', { headerLines: 1 }],
    ['CR', 'time,voltage\r0,0.512\r0.0015,1.25\r0.003,4.5\r', { headerLines: 1 }],
    [
      'blank lines',
      '\n\ntime,voltage\n\n0,0.512\n\n0.0015,1.25\n0.003,4.5\n\n  \n',
      { headerLines: 4 },
    ],
    [
      'lines before',
      'Bench 2; outboard\nrate;1000\n\ntime;voltage\n0;0.512\n0.0015;1.25\n0.003;4.5\n',
      { headerLines: 4 },
    ],
    [
      'numbers before',
      'samples,3\n12,5\n\nt,V\n0,0.512\n0.0015,1.25\n0.003,4.5\n',
      { headerLines: 4 },
    ],
    ['a line of units', 'Time,Wiper\n(ms),(mV)\n0,512\n1.5,1250\n3,4500\n', { headerLines: 2 }],
    ['a remark sign', '# t [us], wiper [V]\n0,0.512\n1500,1.25\n3000,4.5\n', { headerLines: 1 }],
    [
      'quotes',
      '"time (s)","wiper (V)"\n"0","0.512"\n"0.0015","1.25"\n"0.003","4.5"\n',
      { delimiter: ',' },
    ],
    [
      'quoted decimal commas',
      '"time","wiper"\n"0","0,512"\n"0,0015","1,25"\n"0,003","4,5"\n',
      { delimiter: ',', decimal: ',' },
    ],
    ['exponents', 'time,voltage\n0e0,5.12E-1\n1.5e-3,1.25\n+3E-03,4.5\n', {}],
    ['the signal first', 'Wiper (V),Time (ms)\n0.512,0\n1.25,1.5\n4.5,3\n', {}],
    [
      'a count and a supply',
      'no,time,supply (V),wiper (V)\n1,0,5,0.512\n2,0.0015,5,1.25\n3,0.003,5,4.5\n',
      {},
    ],
    [
      'remarks at the end',
      'time,voltage,remark\n0,0.512,\n0.0015,1.25,"snap, hard"\n0.003,4.5,\n',
      {},
    ],
    ['a delimiter at the end', 'time,voltage\n0,0.512,\n0.0015,1.25,\n0.003,4.5,\n', {}],
    [
      'clock times',
      'clock;time;wiper\n10:00:01;0;0.512\n10:00:01;0.0015;1.25\n10:00:01;0.003;4.5\n',
      {},
    ],
  ];

  it.each(files)('reads a file with %s', (_, text, expected) => {
    const { sweep, reading } = readDelimited(text);
    expect([...sweep.time]).toEqual([0, 0.0015, 0.003]);
    expect([...sweep.signal]).toEqual([0.512, 1.25, 4.5]);
    expect(reading).toMatchObject({ ...expected, rows: 3 });
    expect(readDelimited(new TextEncoder().encode(text))).toEqual({ sweep, reading });
  });

  it('tells how it read the columns', () => {
    const text = 'no;t [ms];wiper\n1;0;0.5\n2;1;0.6\n';
    expect(readDelimited(text).reading.columns).toEqual({
      time: { index: 1, name: 't', chosenFrom: 'heading', unit: 'ms', unitFrom: 'heading' },
      signal: {
        index: 2,
        name: 'wiper',
        chosenFrom: 'heading',
        unit: 'V',
        unitFrom: 'assumed',
      },
    });
    const named = {
      timeColumn: 'T [ms]',
      signalColumn: 0,
      timeUnit: 'µs',
      signalUnit: 'mV',
    } as const;
    expect(readDelimited(text, named).reading.columns).toEqual({
      time: {
        index: 1,
        name: 't',
        chosenFrom: 'option',
        unit: 'µs',
        unitFrom: 'option',
      },
      signal: { index: 0, name: 'no', chosenFrom: 'option', unit: 'mV', unitFrom: 'option' },
    });
  });

  it('keeps equal times', () => {
    expect([...readDelimited('t,V\n0,0.5\n0,0.6\n1,0.7\n').sweep.time]).toEqual([0, 0, 1]);
  });

  it('reads whole numbers between commas where headings or an option say that they are fields', () => {
    expect([...readDelimited('t (ms),U (mV)\n0,512\n1,513\n').sweep.signal]).toEqual([
      0.512, 0.513,
    ]);
    const { sweep } = readDelimited('0,512\n1,513\n', { delimiter: ',', signalUnit: 'mV' });
    expect([...sweep.signal]).toEqual([0.512, 0.513]);
  });

  it('reads three decimals after a comma where an option or another number says so', () => {
    const ms = { timeUnit: 'ms', decimal: ',' } as const;
    expect([...readDelimited('0;1,023\n1;1,045\n', ms).sweep.signal]).toEqual([1.023, 1.045]);
    expect([...readDelimited('0;1,023\n1;0,945\n').sweep.signal]).toEqual([1.023, 0.945]);
  });

  it('leaves its input as it was', () => {
    const bytes = new TextEncoder().encode('t,V\n0,0.5\n1,0.6\n');
    const copy = bytes.slice();
    readDelimited(bytes);
    expect(bytes).toEqual(copy);
  });

  it('reads what lies beyond the head of the file, and counts its lines', () => {
    const rows = Array.from({ length: 50_000 }, (_, row) => `${row},${(row % 500) / 100}`);
    const { sweep } = readDelimited(`time (ms),wiper (V)\n${rows.join('\n')}`);
    expect(sweep.time).toHaveLength(50_000);
    expect(sweep.time[49_999]).toBe(49.999);
    rows[40_000] = '40000,x';
    const error = refusal(`time (ms),wiper (V)\n${rows.join('\n')}`);
    expect(error.place).toEqual({ line: 40_002, column: 7 });
  });

  const bytes = (...values: number[]) => Uint8Array.from(values);
  const broken: [string, string | Uint8Array, string, number, number, RegExp][] = [
    ['empty file', '', 'empty-file', 1, 1, /rows of time and voltage/],
    ['empty file with a mark', bytes(0xef, 0xbb, 0xbf), 'empty-file', 1, 1, /empty/],
    ['zero byte', 'time,voltage\n0,\u00001\n', 'binary-file', 2, 3, /0x00.*delimited text/],
    [
      'picture',
      bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0),
      'binary-file',
      3,
      1,
      /0x00/,
    ],
    ['archive', bytes(0x50, 0x4b, 0x03, 0x04), 'binary-file', 1, 3, /0x03/],
    ['half a character of UTF-16', bytes(0xff, 0xfe, 0x74), 'no-numbers', 1, 1, /no rows/],
    ['empty UTF-16', bytes(0xff, 0xfe), 'empty-file', 1, 1, /empty/],
    ['prose', 'The throttle sticks\nin the cold\n', 'no-numbers', 1, 1, /rows of time and voltage/],
    ['blank lines only', '\n \n\n', 'no-numbers', 1, 1, /rows/],
    ['headings only', 'time,voltage\n', 'no-numbers', 1, 1, /rows/],
    ['one column', 'voltage\n0.5\n0.6\n', 'one-column', 2, 1, /column of times/],
    [
      'one column, decimal comma',
      'voltage\n0,5\n0,6\n',
      'ambiguous-comma',
      2,
      2,
      /one number, 0.5\) or part fields \(the fields 0 and 5/,
    ],
    ['one sample', 'time,voltage\n0,0.5\n', 'one-sample', 2, 1, /two or more rows/],
    [
      'short row',
      't,V\n0,0.5\n0.001\n0.002,0.6\n',
      'missing-field',
      3,
      6,
      /signal is missing.*number in V/,
    ],
    [
      'short first row',
      't,V\n0\n0.001,0.5\n0.002,0.6\n',
      'missing-field',
      2,
      2,
      /signal is missing/,
    ],
    [
      'short row of more',
      'a;t;V;b\n1;0;0.5;1\n2;1;0.5\n',
      'missing-field',
      3,
      8,
      /has 3 fields; every row must have 4/,
    ],
    ['empty time', 't,V\n0,0.5\n,0.6\n', 'missing-field', 3, 1, /time is missing.*number in s/],
    ['over range only', 't,V\n0,OL\n0.001,OL\n', 'not-a-number', 2, 3, /“OL”/],
    ['not a number', 't;U (mV)\n0;500\n1;abc\n', 'not-a-number', 3, 3, /“abc”.*number in mV/],
    [
      'two spaces where a field is missing',
      'a b t(s) U(V)\n1 2 0 0.5\n1 2 1 0.6\n7  8 2\n1 2 3 0.7\n',
      'missing-field',
      4,
      7,
      /signal is missing/,
    ],
    ['two decimal points', 't,V\n0,0.5\n1,0.6.1\n', 'not-a-number', 3, 3, /“0.6.1”/],
    ['hexadecimal', 't,V\n0,0.5\n1,0x1F\n', 'not-a-number', 3, 3, /“0x1F”, which is no number/],
    ['an exponent without a number', 't,V\n0,0.5\n1,2e\n', 'not-a-number', 3, 3, /“2e”/],
    ['no reading of the time', 't,V\n0,0.5\nOL,0.6\n', 'not-a-number', 3, 1, /“OL”/],
    ['one reading among none', 't,V\n0,0.5\n1,OL\n2,OL\n', 'one-sample', 2, 1, /two or more rows/],
    [
      'unit in the field',
      't,V\n0,0.5\n1,0.6 V\n',
      'not-a-number',
      3,
      3,
      /“0.6 V”, which is no number/,
    ],
    ['wrong decimal sign', 't;V\n0;0.5\n1;0,6\n', 'not-a-number', 3, 3, /“0,6”.*decimal point/],
    ['text between', 't,V\n0,0.5\n1,0.6\npause\n2,0.7\n', 'not-a-number', 4, 1, /“pause”/],
    ['a damaged row at the end', 't,V\n0,0.5\n1,0.6\nx,0.7\n', 'not-a-number', 4, 1, /time is “x”/],
    ['one column, commas', '0,5\n0,6\n', 'ambiguous-comma', 1, 2, /0.5\).*0 and 5/],
    ['thousands', '0;1,023\n1;1,045\n', 'ambiguous-comma', 1, 4, /1\.023.*1023/],
    ['beyond a double', 't,V\n0,0.5\n1,1e999\n', 'not-finite', 3, 3, /not finite/],
    ['infinite time', 't,V\n0,0.5\ninf,1\n', 'not-finite', 3, 1, /time is “inf”/],
    [
      'time backwards',
      't (ms),V\n0,0.5\n3,0.6\n\n2,0.7\n',
      'time-backwards',
      5,
      1,
      /line 5: 0.002 s follows 0.003 s/,
    ],
    ['time backwards at once', '2,0.5\n1,0.6\n', 'time-backwards', 2, 1, /1 s follows 2 s/],
    ['extra field', 't,V\n0,0.5\n1,0,6\n', 'extra-field', 3, 5, /3 fields; every row must have 2/],
    [
      'decimal commas between commas',
      't,V\n0,000,0,512\n0,001,0,513\n',
      'ambiguous-comma',
      2,
      2,
      /decimal/,
    ],
    ['whole numbers between commas', '0,512\n0,513\n', 'ambiguous-comma', 1, 2, /decimal/],
    ['commas of thousands', '0;1,023\n1;1,045\n', 'ambiguous-comma', 1, 4, /thousands/],
    [
      'too few headings',
      't;V\n0;0.5;7\n1;0.6;7\n',
      'heading-mismatch',
      1,
      1,
      /2 headings over rows of 3/,
    ],
    [
      'unknown unit of time',
      'Wiper,time (min)\n0.5,0\n0.6,1\n',
      'unknown-unit',
      1,
      7,
      /min.*s, ms, µs and times on a clock/,
    ],
    ['mega for milli', 'TIME_MS,WIPER_MV\n0,500\n1,600\n', 'unknown-unit', 1, 1, /MS/],
    ['a count and no time', 'sample,voltage\n1,0.5\n2,0.6\n', 'no-time-column', 1, 1, /timeColumn/],
    ['no voltage', 'time,supply\n1,0.5\n2,0.6\n', 'no-signal-column', 1, 1, /signalColumn/],
    ['characters before', 'µ;t;V\n—;0;0.5\n—;1;x\n', 'not-a-number', 3, 5, /“x”/],
  ];

  it.each(broken)('refuses a file with this fault: %s', (_, input, code, line, column, message) => {
    const error = refusal(input);
    expect(error.message).toMatch(message);
    expect(error).toMatchObject({ code, path: 'bench.csv', place: { line, column } });
  });

  it.each<[DelimitedOptions, string, string]>([
    [{ timeColumn: 2 }, 'no-such-column', 'options.timeColumn'],
    [{ timeColumn: -1 }, 'no-such-column', 'options.timeColumn'],
    [{ signalColumn: 'pressure' }, 'no-such-column', 'options.signalColumn'],
    [{ timeColumn: 0, signalColumn: 't' }, 'same-column', 'options.signalColumn'],
    [{ delimiter: ':' as Delimiter }, 'not-one-of', 'options.delimiter'],
    [{ timeUnit: 'min' as 's' }, 'not-one-of', 'options.timeUnit'],
    [{ sampleRate: 0 }, 'out-of-range', 'options.sampleRate'],
    [{ sampleRate: 100, timeColumn: 0 }, 'two-times', 'options.sampleRate'],
    [{ voltsPerUnit: Number.NaN }, 'out-of-range', 'options.voltsPerUnit'],
    [{ positionColumn: 1 }, 'same-column', 'options.positionColumn'],
  ])('refuses the options %o', (options, code, path) => {
    expect(refusal('t,V\n0,0.5\n1,0.6\n', options)).toMatchObject({ code, path });
  });

  it('refuses a heading that two columns bear', () => {
    const error = refusal('t,V,V\n0,1,2\n1,1,2\n', { signalColumn: 'V' });
    expect(error).toMatchObject({ code: 'ambiguous-column', path: 'options.signalColumn' });
  });

  it('reads back the very numbers that were written', () => {
    const number = fc.double({ noNaN: true, noDefaultInfinity: true });
    const samples = fc.array(fc.tuple(number, number), { minLength: 2, maxLength: 40 });
    const decimals = fc.constantFrom('.' as const, ',' as const);
    const lineEnds = fc.constantFrom('\n', '\r\n');
    fc.assert(
      fc.property(
        samples,
        fc.constantFrom(...delimiters),
        decimals,
        lineEnds,
        fc.boolean(),
        (rows, delimiter, decimal, lineEnd, hasHeadings) => {
          fc.pre(delimiter !== ',' || decimal !== ',');
          const time = rows.map(([t]) => t).sort((one, other) => one - other);
          const signal = rows.map(([, v]) => v);
          const lines = time.map((t, row) =>
            [t, signal[row]].map((x) => String(x).replace('.', decimal)).join(delimiter),
          );
          const text = [...(hasHeadings ? [`time${delimiter}wiper`] : []), ...lines].join(lineEnd);
          const { sweep } = readDelimited(text, { delimiter, decimal });
          expect([...sweep.time]).toEqual(time.map((t) => t + 0));
          expect([...sweep.signal].map((v) => v + 0)).toEqual(signal.map((v) => v + 0));
        },
      ),
      { numRuns: 300 * soak },
    );
  });

  it('finds delimiter and decimal sign of plain recordings by itself', () => {
    const volts = fc.integer({ min: 0, max: 4999 }).map((mV) => (mV / 1000).toFixed(4));
    const decimals = fc.constantFrom('.' as const, ',' as const);
    fc.assert(
      fc.property(
        fc.array(volts, { minLength: 2, maxLength: 60 }),
        fc.constantFrom(...delimiters),
        decimals,
        (values, delimiter, decimal) => {
          fc.pre(delimiter !== ',' || decimal !== ',');
          const lines = values.map((value, row) => `${(row / 1000).toFixed(4)}~${value}`);
          const text = lines.join('\n').replaceAll('.', decimal).replaceAll('~', delimiter);
          const { sweep, reading } = readDelimited(text);
          expect(reading).toMatchObject({ delimiter, decimal, headerLines: 0 });
          expect([...sweep.signal]).toEqual(values.map(Number));
        },
      ),
      { numRuns: 200 * soak },
    );
  });

  it('reads any text or refuses it as InputError with its place, and never yields NaN', () => {
    const piece = fc.constantFrom(
      '0',
      '1',
      '.',
      ',',
      ';',
      '\n',
      '\t',
      ' ',
      '"',
      'e',
      '-',
      't',
      'V',
      '1.5',
      '\r',
      '(s)',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
        try {
          const { sweep } = readDelimited(pieces.join(''));
          expect([...sweep.time, ...sweep.signal].every(Number.isFinite)).toBe(true);
          expect(sweep.time.length).toBeGreaterThanOrEqual(2);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          expect(error.place?.line).toBeGreaterThanOrEqual(1);
          expect(error.place?.column).toBeGreaterThanOrEqual(1);
        }
      }),
      { numRuns: 2000 * soak },
    );
  });
});

describe('what can be read two ways', () => {
  const refused = (text: string, options: DelimitedOptions = {}) =>
    expect(() => readDelimited(text, options));

  it.each([
    ['Zeit;U\n29.11.2026 10:00:00,0;1,5\n29.11.2026 10:00:00,1;1,6\n', 'day and month'],
    ['time,V\n11/29/2026 10:00:00,1.5\n11/29/2026 10:00:01,1.6\n', 'day and month'],
    ['time,V\n10:00:00 AM,1.5\n10:00:01 AM,1.6\n', 'half a day'],
    ['time,V\n2026-11-29 12:59:59.5 pm,1.5\n2026-11-29 01:00:00 p.m.,1.6\n', 'half a day'],
  ])('refuses a date or time that one cannot be sure of, with one that is sure', (text, wrong) => {
    refused(text).toThrow(
      expect.objectContaining({
        code: 'unclear-date',
        place: { line: 2, column: 1 },
        message: expect.stringMatching(new RegExp(`${wrong}.*2026-11-29 14:05:09.25`)),
      }),
    );
  });

  it('refuses an hour that comes twice where summer time ends', () => {
    const text =
      'time,V\n2026-10-25 02:59:59.5,1.5\n2026-10-25 02:59:59.9,1.6\n2026-10-25 02:00:00.3,1.6\n';
    refused(text).toThrow(
      expect.objectContaining({ code: 'clock-set-back', place: { line: 4, column: 1 } }),
    );
  });

  it.each([
    ['t (s);U (mV)\n0;1.234\n1;998\n2;1.001\n', '(1.234 mV) or part thousands (1234 mV)'],
    ['t (ms);U (V)\n999;1.5\n1.000;1.6\n1.001;1.6\n', '(1 ms) or part thousands (1000 ms)'],
  ])('refuses points that may part thousands, with both readings', (text, readings) => {
    // Times of such a file rise only where the points part thousands.
    refused(text).toThrow(
      expect.objectContaining({
        code: 'ambiguous-point',
        message: expect.stringContaining(readings),
      }),
    );
  });

  it('takes points for decimal signs where they can be nothing else, or are told', () => {
    const volts = (text: string, options: DelimitedOptions = {}) => [
      ...readDelimited(text, options).sweep.signal,
    ];
    expect(volts('t (s);U (mV)\n0;1.234\n1;0.998\n')).toEqual([0.001234, 0.000998]);
    expect(volts('t (s);U (mV)\n0;1.234\n1;10.5\n')).toEqual([0.001234, 0.0105]);
    expect(volts('t (s);U (mV)\n0;426.000\n1;426.125\n')).toEqual([0.426, 0.426125]);
    expect(volts('t (s),U (V)\n0,1.234\n1,2.345\n')).toEqual([1.234, 2.345]);
    expect(volts('t (s);U (mV)\n0;1.234\n1;2.345\n', { decimal: '.' })).toEqual([
      0.001234, 0.002345,
    ]);
  });
});

describe('rows without a reading', () => {
  it.each([
    ['empty', 't,V\n0,0.5\n0.001,\n0.002,0.6\n', 'none', 0.001],
    ['over range', 't,V\n0,0.5\n0.001,OL\n0.002,0.6\n', 'above-range', 0.001],
    ['not a number', 't,V\n0,0.5\n0.001,NaN\n0.002,0.6\n', 'none', 0.001],
    ['infinite', 't,V\n0,0.5\n0.001,-inf\n0.002,0.6\n', 'below-range', 0.001],
    ['in milliseconds', 't (ms),V\n0,0.5\n1,OVL\n2,0.6\n', 'above-range', 0.001],
  ] as const)('%s: told between the samples', (_, text, kind, at) => {
    const { sweep, reading } = readDelimited(text);
    expect(sweep).toEqual({
      time: Float64Array.of(0, 0.002),
      signal: Float64Array.of(0.5, 0.6),
      unread: [{ reading: kind, rows: 1, after: 1, start: at, end: at }],
    });
    expect(reading).toMatchObject({ rows: 2, withoutReading: 1 });
  });

  it.each([
    ['before the first', 't,V\n-2,OL\n-1,OL\n0,0.5\n0.002,0.6\n', [[2, 0, -2, -1]]],
    ['after the last', 't,V\n0,0.5\n0.002,0.6\n3,OL\n', [[1, 2, 3, 3]]],
    ['with a clock', 'c;t;V\n9:01;-1;OL\n9:01;0;0.5\n9:01;0.002;0.6\n', [[1, 0, -1, -1]]],
    [
      'of two kinds',
      't,V\n0,0.5\n0.001,OL\n0.0015,\n0.002,0.6\n',
      [
        [1, 1, 0.001, 0.001],
        [1, 1, 0.0015, 0.0015],
      ],
    ],
    ['at a rate', 'V\n0.5\nOL\nOL\n0.6\n', [[2, 1, 0.001, 0.002]]],
  ] as const)('%s', (name, text, expected) => {
    const { sweep } = readDelimited(text, name === 'at a rate' ? { sampleRate: 1000 } : {});
    expect(sweep.unread?.map(({ rows, after, start, end }) => [rows, after, start, end])).toEqual(
      expected,
    );
  });

  it('of another column: nobody knows what the signal was', () => {
    const { sweep } = readDelimited('t,U,Us\n0,0.5,5\n0.001,0.6,OL\n0.002,0.6,5\n', {
      supplyColumn: 'Us',
    });
    expect(sweep.unread).toEqual([
      { reading: 'none', rows: 1, after: 1, start: 0.001, end: 0.001 },
    ]);
  });

  it('come with the samples around them where a file is read in pieces', async () => {
    const file = new Blob(['t,V\n0,0.5\n0.001,OL\n0.002,0.6\n']);
    const runs = [];
    for await (const { unread } of samplesOf(file)) runs.push(unread);
    expect(runs).toEqual([
      [{ reading: 'above-range', rows: 1, after: 1, start: 0.001, end: 0.001 }],
    ]);
  });

  it('their times run forwards too', () => {
    const text = 't,V\n0,0.5\n5,OL\n1,0.6\n';
    expect(() => readDelimited(text)).toThrow(expect.objectContaining({ code: 'time-backwards' }));
  });
});

describe('a recorded supply', () => {
  const text = 't,supply (mV),wiper (V)\n0,4167,0.5\n1,4166,0.6\n2,4165,0.7\n';

  it('is read where its column is named, and only there', () => {
    const { sweep, reading } = readDelimited(text, { supplyColumn: 'supply' });
    expect(sweep.supply).toEqual(Float64Array.of(4.167, 4.166, 4.165));
    expect(sweep.signal).toEqual(Float64Array.of(0.5, 0.6, 0.7));
    expect(reading.columns.supply).toMatchObject({ index: 1, unit: 'mV', unitFrom: 'heading' });
    expect(readDelimited(text).sweep.supply).toBeUndefined();
  });

  it('must be there in every row, and be a column of its own', () => {
    const broken = text.replace('4166', 'x');
    expect(() => readDelimited(broken, { supplyColumn: 1 })).toThrow(
      expect.objectContaining({ code: 'not-a-number', place: { line: 3, column: 3 } }),
    );
    expect(() => readDelimited(text, { supplyColumn: 2 })).toThrow(
      expect.objectContaining({ code: 'same-column', path: 'options.supplyColumn' }),
    );
  });
});

describe('encodings', () => {
  const text = 'Zeit (µs);Spannung (V)\n0;0,5\n2;0,625\n';
  const utf16 = (littleEndian: boolean, mark: boolean): Uint8Array => {
    const marked = mark ? `\uFEFF${text}` : text;
    const view = new DataView(new ArrayBuffer(2 * marked.length));
    for (let i = 0; i < marked.length; i++)
      view.setUint16(2 * i, marked.charCodeAt(i), littleEndian);
    return new Uint8Array(view.buffer);
  };
  const latin1 = Uint8Array.from(text, (character) => character.charCodeAt(0));
  const utf8 = new TextEncoder().encode(text);

  it.each([
    ['UTF-8', utf8, 'utf-8'],
    ['UTF-8 with its mark', Uint8Array.of(0xef, 0xbb, 0xbf, ...utf8), 'utf-8'],
    ['UTF-16, little end first', utf16(true, true), 'utf-16le'],
    ['UTF-16, big end first', utf16(false, true), 'utf-16be'],
    ['Latin-1', latin1, 'windows-1252'],
  ] as const)('%s is read to the same sweep', (_, file, encoding) => {
    const { sweep, reading } = readDelimited(file);
    expect(reading.encoding).toBe(encoding);
    expect(sweep).toEqual({ time: Float64Array.of(0, 2e-6), signal: Float64Array.of(0.5, 0.625) });
  });

  it.each([true, false])('UTF-16 without its mark, by its zero bytes', (littleEndian) => {
    const plain = 'time,volts\n0,0.5\n1,0.625\n2,0.75\n3,0.5\n4,0.5\n';
    const view = new DataView(new ArrayBuffer(2 * plain.length));
    for (let i = 0; i < plain.length; i++) view.setUint16(2 * i, plain.charCodeAt(i), littleEndian);
    const { sweep, reading } = readDelimited(new Uint8Array(view.buffer));
    expect(reading.encoding).toBe(littleEndian ? 'utf-16le' : 'utf-16be');
    expect(sweep.signal).toEqual(Float64Array.of(0.5, 0.625, 0.75, 0.5, 0.5));
  });
});

describe('times on a clock', () => {
  it.each([
    ['a time of day', 'time,V\n10:59:59.9985,0.5\n10:59:59.9995,0.6\n11:00:00.001,0.7\n'],
    ['midnight', 'time,V\n23:59:59.9985,0.5\n23:59:59.9995,0.6\n00:00:00.001,0.7\n'],
    [
      'dates',
      'stamp,ch (V)\n2026-12-31T23:59:59.9985Z,0.5\n2026-12-31T23:59:59.9995Z,0.6\n2027-01-01T00:00:00.001Z,0.7\n',
    ],
    [
      'zones that change',
      't;V\n2026-10-25 02:59:59.9985+02:00;0.5\n2026-10-25 02:59:59.9995+0200;0.6\n2026-10-25 02:00:00.001+01:00;0.7\n',
    ],
    ['a decimal comma', 'V;clock\n0,5;07:00:00,0000\n0,6;07:00:00,0010\n0,7;07:00:00,0025\n'],
    ['no headings', '8:00:00.0000;0.5\n8:00:00.0010;0.6\n8:00:00.0025;0.7\n'],
  ])('%s: seconds since the first, as the decimals that they are', (_, text) => {
    const { sweep, reading } = readDelimited(text);
    expect(sweep).toEqual({
      time: Float64Array.of(0, 0.001, 0.0025),
      signal: Float64Array.of(0.5, 0.6, 0.7),
    });
    expect(reading.columns.time).toMatchObject({ unit: 'clock', unitFrom: 'values' });
  });

  it.each([
    ['an hour back', 't,V\n03:00:00,0.5\n02:00:00,0.6\n', 'clock-set-back', 3],
    ['a date that comes', 't,V\n03:00:00,0.5\n2026-01-01T03:00:01,0.6\n', 'mixed-times', 3],
    ['no such time', 't,V\n03:00:00,0.5\n03:00:01,0.5\n03:61:00,0.6\n', 'not-a-number', 4],
    [
      'no such date',
      't,V\n2026-02-28T00:00:00,1\n2026-02-28T00:00:01,1\n2026-02-30T00:00:00,1\n',
      'not-a-number',
      4,
    ],
  ])('refuses %s', (_, text, code, line) => {
    expect(refusal(text)).toMatchObject({ code, place: { line, column: 1 } });
  });
});

describe('a file without times', () => {
  const rows = '0.5\n0.6\n0.7\n';
  const times = (rate: number) => Float64Array.of(0, 1 / rate, 2 / rate);

  it.each<[string, string, DelimitedOptions, number, string]>([
    ['one column, told', rows, { sampleRate: 48_000 }, 48_000, 'option'],
    ['a heading, told', `wiper (V)\n${rows}`, { sampleRate: 3 }, 3, 'option'],
    ['a rate above', `Sample rate: 10 kHz\n\nwiper\n${rows}`, {}, 10_000, 'preamble'],
    ['a rate in its own field', `Sampling rate (S/s);1000\nwiper\n${rows}`, {}, 1000, 'preamble'],
    ['a rate without a unit', `sample_rate=250\n${rows}`, {}, 250, 'preamble'],
    ['an interval above', `# Sample interval: 0.5 ms\n${rows}`, {}, 2000, 'preamble'],
    ['two channels', `Rate: 2 MS/s\nch1 (V),ch2 (V)\n0.5,1\n0.6,1\n0.7,1\n`, {}, 2e6, 'preamble'],
    ['a count', `Sample rate 8 Hz\nno,V\n1,0.5\n2,0.6\n3,0.7\n`, {}, 8, 'preamble'],
    ['times passed over', 't,V\n7,0.5\n8,0.6\n8,0.7\n', { sampleRate: 5 }, 5, 'option'],
  ])('%s', (_, text, options, hertz, from) => {
    const { sweep, reading } = readDelimited(text, options);
    expect(sweep).toEqual({ time: times(hertz), signal: Float64Array.of(0.5, 0.6, 0.7) });
    expect(reading.sampleRate).toEqual({ hertz, from });
    expect(reading.columns.time).toBeUndefined();
  });

  it('counts rows without a reading too, so that the gap has its length', () => {
    const { sweep } = readDelimited('0.5\nOL\n0.7\n0.8\n', { sampleRate: 10 });
    expect(sweep.time).toEqual(Float64Array.of(0, 0.2, 0.3));
  });

  it('keeps to the times of a file that tells its rate as well', () => {
    const { reading, sweep } = readDelimited('Sample rate: 10 Hz\nt (ms),V\n0,0.5\n99,0.6\n');
    expect(sweep.time).toEqual(Float64Array.of(0, 0.099));
    expect(reading.sampleRate).toBeUndefined();
  });
});

describe('readings in counts and percent', () => {
  it('are scaled by what one of them is', () => {
    const text = 't,adc (counts)\n0,512\n1,1023\n';
    const { sweep, reading } = readDelimited(text, { voltsPerUnit: 5 / 1024 });
    expect(sweep.signal).toEqual(Float64Array.of(2.5, 1023 * (5 / 1024)));
    expect(reading.columns.signal).toMatchObject({ unit: 'counts', voltsPerUnit: 5 / 1024 });
    const percent = readDelimited('t;wiper (%)\n0;10,5\n1;90\n', { voltsPerUnit: 0.05 });
    expect(percent.sweep.signal).toEqual(Float64Array.of(10.5 * 0.05, 90 * 0.05));
  });

  it('are refused without a scale', () => {
    const error = refusal('t;wiper (%)\n0;10,5\n1;90\n');
    expect(error).toMatchObject({ code: 'no-scale', place: { line: 1, column: 3 } });
    expect(error.message).toMatch(/voltsPerUnit.*hundredth/);
  });

  it.each([
    ['t,U (mV)\n0,512\n1,1023\n', {}, 'its heading says mV'],
    ['t,U\n0,512\n1,1023\n', {}, 'taken for V'],
    ['t,U\n0,512\n1,1023\n', { signalUnit: 'mV' }, 'mV, as the option signalUnit says'],
  ] as const)('refuse a scale that nothing is scaled by: %j', (text, options, said) => {
    const error = refusal(text, { voltsPerUnit: 0.005, ...options });
    expect(error).toMatchObject({ code: 'needless-scale', path: 'options.voltsPerUnit' });
    expect(error.message).toContain(said);
    expect(error.message).toMatch(/counts or percent.*signalUnit/);
  });

  it('take a scale that the supply alone needs', () => {
    const text = 't,U (V),supply (counts)\n0,0.5,1000\n1,0.6,1000\n';
    const { sweep } = readDelimited(text, { supplyColumn: 2, voltsPerUnit: 0.005 });
    expect(sweep.signal).toEqual(Float64Array.of(0.5, 0.6));
    expect(sweep.supply).toEqual(Float64Array.of(5, 5));
  });
});

describe('what stands around the rows', () => {
  it('headings that stand again are passed over', () => {
    const text = 'port\nt,V\n0,0.5\n1,0.6\nport\nt,V\n2,0.7\n';
    const { sweep, reading } = readDelimited(text);
    expect(sweep.signal).toEqual(Float64Array.of(0.5, 0.6, 0.7));
    expect(reading).toMatchObject({ repeatedHeadings: 1, footerLines: 0 });
  });

  it('a recording that begins anew below them is refused with the place', () => {
    const error = refusal('t,V\n0,0.5\n1,0.6\nt,V\n0,0.7\n');
    expect(error).toMatchObject({ code: 'time-backwards', place: { line: 5, column: 1 } });
    expect(error.message).toMatch(/line 4 the headings stand again.*split the file/);
  });

  it('text below the rows is passed over', () => {
    const text = 't,V\n0,0.5\n1,0.6\n\nMinimum,0.5\nend of recording\n';
    expect(readDelimited(text).reading).toMatchObject({ rows: 2, footerLines: 2 });
  });
});

describe('further columns', () => {
  it('a second track and the position are read where they are named', () => {
    const text = 't,V,b (mV),shaft (%)\n0,0.5,4500,0\n1,0.6,4400,2.5\n';
    const recording = readDelimited(text, { secondColumn: 'b', positionColumn: 3 });
    expect(recording.second).toEqual(Float64Array.of(4.5, 4.4));
    expect(recording.position).toEqual(Float64Array.of(0, 2.5));
    expect(Object.keys(recording.sweep)).toEqual(['time', 'signal']);
  });
});

it('begins with rows without a reading, however many', () => {
  const rows = Array.from({ length: 1500 }, (_, i) => `${i};${i < 900 ? 'OL' : 1}`);
  const { sweep, reading } = readDelimited(['t (ms);U (V)', ...rows].join('\n'));
  expect([sweep.time.length, reading.withoutReading]).toEqual([600, 900]);
});

describe('lines that carry checks', () => {
  const encoder = new TextEncoder();
  const checked = (line: string): string => `${checkedLine(line)}\n`;
  const rows = Array.from({ length: 4000 }, (_, i) => `${1000 * i},${500 + (i % 7)},1023`);
  const heading = 'time (us),signal (counts),supply (counts)';
  const options: DelimitedOptions = { voltsPerUnit: 5 / 1024, supplyColumn: 'supply' };
  const text = [heading, ...rows.slice(0, 1000), heading, ...rows.slice(1000)]
    .map(checked)
    .join('');

  it('are read as the same lines without, headings between them included', () => {
    const { sweep, reading } = readDelimited(text, options);
    expect(sweep).toEqual(readDelimited([heading, ...rows].join('\n'), options).sweep);
    expect(reading).toMatchObject({ rows: 4000, damagedLines: 0, repeatedHeadings: 1 });
    expect(readDelimited('0;1\n1;2\n').reading).not.toHaveProperty('damagedLines');
  });

  it('are passed over where the check does not fit, wherever pieces are cut', () => {
    const lines = text.split('\n');
    lines[5] = lines[5]!.replace('1023', '102');
    lines[3000] = lines[3000]!.slice(3);
    lines.splice(3500, 2, lines.slice(3500, 3502).join(''));
    const bytes = encoder.encode(lines.join('\n').trimEnd());
    const reader = delimitedReader(options);
    for (let at = 0; at < bytes.length; at += 997) reader.feed(bytes.subarray(at, at + 997));
    const { sweep, reading } = reader.end();
    expect(reading).toMatchObject({ rows: 4000 - 4, damagedLines: 3 });
    const sent = new Set(rows.map((row) => Number(row.split(',')[0]) / 1e6));
    expect(Array.from(sweep.time).every((time) => sent.has(time))).toBe(true);
  });
});
