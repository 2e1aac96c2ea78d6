import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkedLine as checked } from '../../../../tests/controller/checkedLine.js';
import { soak } from '../../../../tests/counts.js';
import type { DelimitedOptions } from '../delimitedOptions.js';
import { readDelimited } from '../readDelimited.js';
import { type LiveSamples, liveReader } from './liveReader.js';

const encoder = new TextEncoder();
const heading = 'time (us),signal (counts),supply (counts)';
const counts: DelimitedOptions = { supplyColumn: 'supply', voltsPerUnit: 5 / 1024 };
/** The same, told without headings. */
const told: DelimitedOptions = {
  delimiter: ',',
  timeUnit: 'µs',
  signalUnit: 'counts',
  supplyColumn: 2,
  voltsPerUnit: 5 / 1024,
};

/** Rows a millisecond apart from a stamp on, a 32-bit counter of microseconds. */
const rowsFrom = (first: number, count: number): readonly string[] =>
  Array.from({ length: count }, (_, i) => {
    const stamp = (first + 1000 * i) % 2 ** 32;
    return `${stamp},${100 + (i % 800)},1023`;
  });

interface Read extends Pick<LiveSamples, 'text'> {
  readonly time: readonly number[];
  readonly signal: readonly number[];
  readonly reader: ReturnType<typeof liveReader>;
}

/** What is read of pieces, each with the time of its arrival where one is told. */
function read(
  pieces: readonly (string | Uint8Array | 'lost')[],
  options: DelimitedOptions = {},
  arrivals: readonly number[] = [],
): Read {
  const reader = liveReader(options);
  const taken = pieces.map((piece, i) => {
    if (piece === 'lost') {
      reader.lost();
      return undefined;
    }
    return reader.feed(typeof piece === 'string' ? encoder.encode(piece) : piece, arrivals[i]);
  });
  const all = [...taken, reader.end()].flatMap((samples) => (samples ? [samples] : []));
  return {
    time: all.flatMap(({ time }) => Array.from(time)),
    signal: all.flatMap(({ signal }) => Array.from(signal)),
    text: all.map(({ text }) => text).join(''),
    reader,
  };
}

const lines = (...rows: readonly string[]): string => rows.map((row) => `${row}\n`).join('');

describe('liveReader', () => {
  test.each<[string, string, DelimitedOptions]>([
    ['headings and a decimal point', lines('time (s),wiper (V)', '0,1', '0.5,1.25', '1,1.5'), {}],
    ['decimal commas', lines('t (ms);U (mV)', '0;1000,5', '500;1250', '1000;1500'), {}],
    ['CR alone', 't;U\r0;1.0005\r0.5;1.25\r1;1.5\r', {}],
    ['spaces', lines('0 1.0005', '0.5   1.25', '1 1.5'), {}],
    ['a rate', lines('1.0005', '1.25', '1.5'), { sampleRate: 2 }],
    ['times of day', lines('t;U', '12:00:00.0;1', '12:00:00.5;1.25', '12:00:01.0;1.5'), {}],
  ])('reads what files are read of: %s', (_, text, options) => {
    const { time, signal } = read(Array.from(text), options);
    expect(time).toEqual([0, 0.5, 1]);
    expect(signal.slice(1)).toEqual([1.25, 1.5]);
  });

  test('begins after sixteen lines, not after a whole file', () => {
    const reader = liveReader({});
    expect(
      reader.feed(encoder.encode(lines(...rowsFrom(0, 15).map((row) => row.replaceAll(',', ';')))))
        .time,
    ).toHaveLength(0);
    expect(reader.reading().columns).toBeUndefined();
    expect(reader.feed(encoder.encode('15000;1;1023\n')).time).toHaveLength(16);
  });

  test('carries a counter on that wraps, in µs and in ms of 16 and of 32 bits', () => {
    for (const [unit, bits, tick] of [
      ['us', 32, 1e-6],
      ['ms', 32, 1e-3],
      ['ms', 16, 1e-3],
      ['us', 16, 1e-6],
    ] as const) {
      const step = 1e-3 / tick;
      const rows = Array.from(
        { length: 60 },
        (_, i) => `${(2 ** bits - 30 * step + i * step) % 2 ** bits};${i}`,
      );
      const { time, reader } = read([lines(`t (${unit});U (V)`, ...rows)]);
      expect(time).toEqual(Array.from({ length: 60 }, (_, i) => i / 1000));
      expect(reader.reading().gapCount).toBe(0);
    }
  });

  test('a restart is a gap as long as it took to come, or of a second where nothing tells', () => {
    const pieces = [lines(heading, ...rowsFrom(9e6, 100)), lines(...rowsFrom(0, 100))];
    const { time, reader } = read(pieces, counts);
    expect(time[100]).toBe(1.099);
    expect(reader.reading().gaps).toEqual([{ kind: 'restarted', start: 0.099, end: 1.099 }]);
    expect(read(pieces, counts, [10, 10.75]).time[100]).toBe(0.849);
  });

  test('rows that are missing are a gap as long as their stamps tell', () => {
    const rows = rowsFrom(0, 3000);
    const { time, reader } = read(
      [lines(heading, ...rows.slice(0, 1000), ...rows.slice(1500))],
      counts,
    );
    expect(time).toHaveLength(2500);
    expect(reader.reading()).toMatchObject({
      gapCount: 1,
      gaps: [{ kind: 'lost', start: 0.999, end: 1.5 }],
    });
  });

  test('a stamp that leaps and is not followed is left out', () => {
    for (const wrong of ['99', '5000000', '0']) {
      const rows = [...rowsFrom(1e6, 50), `${wrong},7,1023`, ...rowsFrom(1.05e6, 50)];
      const { signal, time, reader } = read([lines(heading, ...rows)], {
        ...counts,
        voltsPerUnit: 1,
      });
      expect(signal).not.toContain(7);
      expect(time).toEqual(Array.from({ length: 100 }, (_, i) => i / 1000));
      expect(reader.reading().damagedLines).toBe(1);
    }
  });

  test('rows of a recorder that writes changes only come with their stamps', () => {
    const stamps = [0, 1, 2, 3, 4, 5, 900, 2400, 2410, 5000, 5001, 9000];
    const { time } = read([lines('t (ms);U (V)', ...stamps.map((at) => `${at};1`))]);
    // The last waits for a row that follows it.
    expect(time).toEqual(stamps.slice(0, -1).map((at) => at / 1000));
  });

  test('what follows a line without end is no row', () => {
    const reader = liveReader(counts);
    reader.feed(encoder.encode(lines(heading, ...rowsFrom(0, 40))));
    reader.feed(new Uint8Array(70_000));
    expect(reader.feed(encoder.encode('31,4,1023\n')).time).toHaveLength(0);
    expect(reader.feed(encoder.encode(lines(...rowsFrom(90_000, 5)))).time).toHaveLength(5);
    expect(reader.reading()).toMatchObject({ damagedLines: 1, gapCount: 1 });
  });

  test('a digit that was flipped is no counter that wraps', () => {
    const rows = [...rowsFrom(1e7, 25), '10005000,7,1023', ...rowsFrom(10_026_000, 25)];
    const { time, signal, reader } = read([lines(heading, ...rows)], {
      ...counts,
      voltsPerUnit: 1,
    });
    expect([signal.includes(7), time.at(-1)]).toEqual([false, 0.05]);
    expect(reader.reading().damagedLines).toBe(1);
  });

  test('three checks that fit are proof, whatever text came before', () => {
    const boot = Array.from({ length: 12 }, (_, i) => `ready ${i}`);
    const rows = [heading, ...rowsFrom(0, 40)].map(checked);
    rows[30] = rows[30]!.replace('1023', '1024');
    const { time, reader } = read([lines(...boot, ...rows)], counts);
    expect([time.length, reader.reading().isChecked]).toEqual([39, true]);
  });

  test('lines with checks but without headings need none where the columns are told', () => {
    expect(read([lines(...rowsFrom(0, 30).map(checked))], told).time).toHaveLength(30);
    const reader = liveReader({ delimiter: ',', voltsPerUnit: 1 });
    for (let i = 0; i < 20; i++) reader.feed(encoder.encode(lines(checked(`${i},1`))), i / 10);
    expect(reader.reading().columns).toBeUndefined();
  });

  test('of rows at a rate a damaged one takes its time, and what was lost as long as it took to come', () => {
    const rows = Array.from({ length: 40 }, (_, i) => `${i % 7}.5`);
    const rate = { sampleRate: 1000 };
    const wrong = read([lines(...rows.slice(0, 20), 'x?', ...rows.slice(21))], rate);
    expect([wrong.time.length, wrong.time[19], wrong.time[20]]).toEqual([39, 0.019, 0.021]);
    const lost = read(
      [lines(...rows.slice(0, 20)), 'lost', lines('1.5', ...rows.slice(20))],
      rate,
      [5, 0, 5.5],
    );
    expect(lost.time[20]).toBeCloseTo(0.519, 6);
  });

  test('a clock goes on past midnight, with a date and without', () => {
    const clock = (day: string) => [
      ...Array.from({ length: 20 }, (_, i) => `${day}23:59:${40 + i};1`),
      ...(day ? ['2026-03-02T00:00:04;1'] : ['00:00:04;1']),
    ];
    for (const day of ['', '2026-03-01T']) {
      const { time, reader } = read([
        lines('t;U', ...clock(day), ...(day ? ['2026-03-02T00:00:05;1'] : ['00:00:05;1'])),
      ]);
      expect(time.slice(-2)).toEqual([24, 25]);
      expect(reader.reading().gaps.map(({ kind }) => kind)).not.toContain('restarted');
    }
  });

  test('stamps coarser than the rows are no gaps', () => {
    const rows = Array.from({ length: 2000 }, (_, i) => `${10 * Math.floor(i / 20)};1`);
    expect(read([lines('t (ms);U (V)', ...rows)]).reader.reading().gapCount).toBe(0);
  });

  test('rows without a reading may come first', () => {
    const rows = Array.from({ length: 60 }, (_, i) => `${i};${i < 20 ? 'OL' : 1}`);
    expect(read(lines('t (ms);U (V)', ...rows).split(/(?<=\n)/)).time).toHaveLength(40);
  });

  test('half a line is none: at the beginning, where the plug was pulled, at the end', () => {
    const reader = liveReader(counts, true);
    const [first, second] = [rowsFrom(0, 40), rowsFrom(60_000, 40)];
    const heads = reader.feed(encoder.encode(lines(`3,5,1023`, heading, ...first)));
    const before = reader.feed(encoder.encode('40000,5'));
    reader.lost();
    const after = reader.feed(encoder.encode(`12,1023\n${lines(...second)}100000,7`));
    expect([heads.time.length, before.time.length, after.time.length]).toEqual([40, 0, 40]);
    expect(reader.end().time).toHaveLength(0);
    expect(reader.reading().gaps).toEqual([{ kind: 'lost', start: 0.039, end: 0.06 }]);
  });

  test('a heading that comes first is no half row', () => {
    const reader = liveReader(counts, true);
    expect(reader.feed(encoder.encode(lines(heading, ...rowsFrom(0, 40)))).time).toHaveLength(40);
  });

  test('rows without a reading are saved and told as such', () => {
    const text = lines(
      't (ms);U (V)',
      ...rowsFrom(0, 20).map((_, i) => `${i};${i === 3 ? 'OL' : i === 5 ? '' : 1}`),
    );
    const { text: saved, time } = read([text]);
    expect(time).toHaveLength(18);
    const again = readDelimited(saved).sweep;
    expect(again.unread).toEqual(readDelimited(text).sweep.unread);
  });

  test('refuses rows whose columns or scale can not be told', () => {
    expect(() => read([lines(heading, ...rowsFrom(0, 20))])).toThrow(
      expect.objectContaining({ code: 'no-scale' }),
    );
    expect(() => liveReader({ delimiter: '/' as never })).toThrow(
      expect.objectContaining({ code: 'not-one-of' }),
    );
  });

  test('what is no text gives nothing, however much of it comes', () => {
    const reader = liveReader();
    const noise = Uint8Array.from({ length: 50_000 }, (_, i) => (i * 7919) % 251);
    for (let k = 0; k < 8; k++) expect(reader.feed(noise).time).toHaveLength(0);
    expect(reader.reading().rows).toBe(0);
    expect(reader.reading().damagedLines).toBeGreaterThan(100);
    const { time } = reader.feed(
      encoder.encode(lines('', 't;U', ...rowsFrom(0, 64).map((row) => row.replaceAll(',', ';')))),
    );
    expect(time.length).toBeGreaterThan(0);
  });
});

describe('however lines are damaged', () => {
  const rows = rowsFrom(2 ** 32 - 400_000, 1200);
  const sent = encoder.encode(
    lines(...[heading, ...rows.slice(0, 500), heading, ...rows.slice(500)].map(checked)),
  );
  const damage = fc.record({
    lost: fc.array(
      fc.record({
        at: fc.integer({ min: 0, max: sent.length - 1 }),
        length: fc.integer({ min: 1, max: 60 }),
      }),
      { maxLength: 12 },
    ),
    flipped: fc.array(
      fc.record({
        at: fc.integer({ min: 0, max: sent.length - 1 }),
        by: fc.integer({ min: 1, max: 255 }),
      }),
      { maxLength: 12 },
    ),
    cuts: fc.array(fc.integer({ min: 1, max: 4000 }), { minLength: 1, maxLength: 8 }),
    restart: fc.option(fc.integer({ min: 600, max: 1100 }), { nil: undefined }),
  });

  test('checked lines give nothing that was not sent, in time, the same in any pieces, and the saved text reads the same', () => {
    fc.assert(
      fc.property(damage, ({ lost, flipped, cuts, restart }) => {
        const bytes = Array.from(sent);
        for (const { at, by } of flipped) bytes[at]! ^= by;
        for (const { at, length } of lost) bytes.splice(at, length);
        const all = Uint8Array.from(
          restart === undefined
            ? bytes
            : [
                ...bytes.slice(0, 15 * restart),
                ...encoder.encode(lines(...[heading, ...rowsFrom(0, 300)].map(checked))),
              ],
        );
        const pieces: Uint8Array[] = [];
        for (let at = 0, i = 0; at < all.length; i++) {
          const end = at + cuts[i % cuts.length]!;
          pieces.push(all.slice(at, end));
          at = end;
        }
        const whole = read([all], told);
        expect(read(pieces, told).text).toBe(whole.text);
        expect(whole.time.every((time, i) => i === 0 || time >= whole.time[i - 1]!)).toBe(true);
        // Every reading was sent in this order: a sample that is made up would stand in no row.
        for (const line of whole.text.split('\n').slice(1, -1)) {
          const [, signal, supply] = line.split(',');
          expect(supply).toBe('1023');
          expect(Number(signal)).toBeGreaterThanOrEqual(100);
        }
        if (restart === undefined) {
          const stamps = whole.time.map((time) => Math.round((time - whole.time[0]!) * 1000));
          expect(new Set(stamps).size).toBe(stamps.length);
        }
        const { sweep } = readDelimited(whole.text, {
          ...counts,
          ...whole.reader.reading().savedAs,
        });
        expect(Array.from(sweep.time)).toEqual(whole.time);
        expect(Array.from(sweep.signal)).toEqual(whole.signal);
        expect(whole.reader.reading().isChecked).toBe(true);
      }),
      { numRuns: 60 * soak },
    );
  });
});
