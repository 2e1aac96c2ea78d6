import { InputError } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { readSound } from './readSound.js';
import { isSound } from './soundFormat.js';
import type { SoundOptions } from './soundOptions.js';

const told: SoundOptions = { fullScale: 2, attenuation: 3, microphoneBias: 'off' };

interface Made {
  readonly tag?: number;
  readonly bits: number;
  readonly channels?: number;
  readonly extensible?: boolean;
  /** Samples of all channels in turn: whole steps, or fractions for floating point. */
  readonly samples: readonly number[];
  readonly size?: number;
  readonly before?: readonly number[];
}

/** A sound file, byte by byte. */
function sound({ tag = 1, bits, channels = 1, extensible = false, samples, ...more }: Made) {
  const words = (text: string) => Array.from(text, (one) => one.charCodeAt(0));
  const little = (value: number, bytes: number) =>
    Array.from({ length: bytes }, (_, i) => Math.floor(value / 256 ** i) & 0xff);
  const frame = (channels * bits) / 8;
  const description = [
    ...little(extensible ? 0xfffe : tag, 2),
    ...little(channels, 2),
    ...little(48_000, 4),
    ...little(48_000 * frame, 4),
    ...little(frame, 2),
    ...little(bits, 2),
    ...(extensible ? [...little(22, 2), ...little(bits, 2), ...little(0, 4)] : []),
    ...(extensible ? [...little(tag, 2), ...new Array(14).fill(0)] : []),
  ];
  const data = samples.flatMap((sample) => {
    if (tag !== 3) return little(sample < 0 ? sample + 2 ** bits : sample, bits / 8);
    const bytes = new Uint8Array(bits / 8);
    const view = new DataView(bytes.buffer);
    if (bits === 32) view.setFloat32(0, sample, true);
    else view.setFloat64(0, sample, true);
    return Array.from(bytes);
  });
  const chunk = (name: string, body: readonly number[], size = body.length) => [
    ...words(name),
    ...little(size, 4),
    ...body,
    ...(body.length % 2 ? [0] : []),
  ];
  const body = [
    ...words('WAVE'),
    ...(more.before ? chunk('LIST', more.before) : []),
    ...chunk('fmt ', description),
    ...chunk('data', data, more.size),
  ];
  return Uint8Array.from([...words('RIFF'), ...little(body.length, 4), ...body]);
}

function refusal(bytes: Uint8Array, options = told): InputError {
  try {
    readSound(bytes, options);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('The file was read.');
}

describe('readSound', () => {
  test.each<[string, Made, readonly number[]]>([
    [
      '16 bits',
      { bits: 16, samples: [0, 16_384, -32_768, 32_767] },
      [0, 3, -6, (6 * 32_767) / 32_768],
    ],
    ['24 bits', { bits: 24, samples: [0, 4_194_304, -8_388_608, -1] }, [0, 3, -6, -6 / 8_388_608]],
    ['32 bits', { bits: 32, samples: [0, 2 ** 30, -(2 ** 31), 1] }, [0, 3, -6, 6 / 2 ** 31]],
    ['floating point', { tag: 3, bits: 32, samples: [0, 0.5, -1, 0.25] }, [0, 3, -6, 1.5]],
    ['long floating point', { tag: 3, bits: 64, samples: [0, 0.1] }, [0, 0.1 * 6]],
    ['an extended description', { bits: 24, extensible: true, samples: [0, 4_194_304] }, [0, 3]],
    ['another chunk before', { bits: 16, before: [1, 2, 3], samples: [0, 16_384] }, [0, 3]],
  ])('%s', (_, made, volts) => {
    const { sweep, reading } = readSound(sound(made), told);
    expect(Array.from(sweep.signal, (one) => one + 0)).toEqual(volts);
    expect(Array.from(sweep.time)).toEqual(volts.map((__, i) => i / 48_000));
    expect(reading).toMatchObject({
      coding: made.tag === 3 ? 'float' : 'PCM',
      bits: made.bits,
      hertz: 48_000,
      rows: volts.length,
      isCut: false,
      range: { low: -6, high: 6 },
    });
  });

  test('two channels: either is the signal, the other supply or second track', () => {
    const file = sound({ bits: 16, channels: 2, samples: [1, 2, 3, 4].map((n) => n * 4096) });
    expect(readSound(file, told).sweep.signal).toEqual(Float64Array.of(0.75, 2.25));
    const other = readSound(file, { ...told, signalChannel: 1, supplyChannel: 0 });
    expect(other.sweep.signal).toEqual(Float64Array.of(1.5, 3));
    expect(other.sweep.supply).toEqual(Float64Array.of(0.75, 2.25));
    expect(readSound(file, { ...told, secondChannel: 1 }).second).toEqual(Float64Array.of(1.5, 3));
  });

  test.each([
    ['is not told', 0],
    ['is not known', 0xffffffff],
    ['is more than there is', 400],
  ])('a size that %s: the whole samples that are there are read', (_, size) => {
    const file = sound({ bits: 16, samples: [0, 16_384, 8192], size });
    const { sweep, reading } = readSound(file.subarray(0, file.length - 1), told);
    expect(sweep.signal).toEqual(Float64Array.of(0, 3));
    expect(reading.isCut).toBe(true);
  });

  test('samples that are no numbers are told apart', () => {
    const { sweep, reading } = readSound(
      sound({ tag: 3, bits: 32, samples: [0, Number.NaN, 0.5, Number.POSITIVE_INFINITY] }),
      told,
    );
    const [second, last] = [1 / 48_000, 3 / 48_000];
    expect(sweep).toEqual({
      time: Float64Array.of(0, 2 / 48_000),
      signal: Float64Array.of(0, 3),
      unread: [
        { reading: 'none', rows: 1, after: 1, start: second, end: second },
        { reading: 'above-range', rows: 1, after: 2, start: last, end: last },
      ],
    });
    expect(reading.withoutReading).toBe(2);
  });

  test.each([
    ['text', new TextEncoder().encode('t,V\n0,1\n'), 'not-a-sound'],
    ['nothing', new Uint8Array(), 'not-a-sound'],
    ['8 bits', sound({ bits: 8, samples: [1, 2] }), 'unknown-coding'],
    ['a compressed coding', sound({ tag: 85, bits: 16, samples: [1, 2] }), 'unknown-coding'],
    ['no samples', sound({ bits: 16, samples: [] }).subarray(0, 36), 'no-samples'],
    ['one sample', sound({ bits: 16, samples: [1] }), 'one-sample'],
    [
      'a description that is cut',
      sound({ bits: 16, samples: [1, 2] }).subarray(0, 30),
      'no-format',
    ],
    ['no channel', sound({ bits: 16, channels: 0, samples: [1, 2] }), 'no-format'],
  ])('refuses %s', (_, bytes, code) => {
    expect(refusal(bytes)).toMatchObject({ code, path: 'recording' });
  });

  test.each<[object, string, string]>([
    [{ fullScale: undefined }, 'missing', 'options.fullScale'],
    [{ fullScale: 0 }, 'out-of-range', 'options.fullScale'],
    [{ attenuation: undefined }, 'missing', 'options.attenuation'],
    [{ microphoneBias: 'on' }, 'not-one-of', 'options.microphoneBias'],
    [{ signalChannel: 1 }, 'no-such-channel', 'options.signalChannel'],
    [{ supplyChannel: -1 }, 'no-such-channel', 'options.supplyChannel'],
  ])('refuses the options %o', (change, code, path) => {
    const file = sound({ bits: 16, samples: [1, 2] });
    expect(refusal(file, { ...told, ...change } as SoundOptions)).toMatchObject({ code, path });
  });

  test('any damage is read or refused', () => {
    const file = sound({ bits: 24, channels: 2, extensible: true, samples: [1, 2, 3, 4, 5, 6] });
    for (let at = 0; at < file.length; at++) {
      for (const byte of [0, 1, 0x7f, 0xff]) {
        const broken = file.slice();
        broken[at] = byte;
        for (const bytes of [broken, broken.subarray(0, at)]) {
          try {
            expect(readSound(bytes, told).sweep.time.length).toBeGreaterThan(1);
          } catch (error) {
            if (!(error instanceof InputError)) throw error;
          }
        }
      }
    }
  });

  test('a sound file is known by its first bytes', () => {
    expect(isSound(sound({ bits: 16, samples: [] }))).toBe(true);
    expect(isSound(new TextEncoder().encode('RIFF,data'))).toBe(false);
  });
});
