import type { ReadBy } from './protocol.js';

/** What the choosers of a reading hold, as it was typed; empty where it is as the file says. */
export type ReadingTexts = Readonly<
  Record<
    | 'timeColumn'
    | 'signalColumn'
    | 'supplyColumn'
    | 'timeUnit'
    | 'signalUnit'
    | 'rate'
    | 'bits'
    | 'fullScale'
    | 'soundFullScale'
    | 'attenuation'
    | 'microphone',
    string
  >
>;

const empty: ReadingTexts = {
  timeColumn: '',
  signalColumn: '',
  supplyColumn: '',
  timeUnit: '',
  signalUnit: '',
  rate: '',
  bits: '',
  fullScale: '',
  soundFullScale: '',
  attenuation: '1',
  microphone: '',
};

/** What choosers hold for a reading that was told. */
export function textsOf({ text = {}, sound }: ReadBy): ReadingTexts {
  const { timeColumn, signalColumn, supplyColumn } = text;
  const { timeUnit, signalUnit, sampleRate, voltsPerUnit } = text;
  const isPercent = signalUnit === '%';
  return {
    ...empty,
    ...(timeColumn !== undefined && { timeColumn: `${timeColumn}` }),
    ...(sampleRate !== undefined && { timeColumn: 'none', rate: `${sampleRate}` }),
    ...(signalColumn !== undefined && { signalColumn: `${signalColumn}` }),
    ...(supplyColumn !== undefined && { supplyColumn: `${supplyColumn}` }),
    ...(timeUnit !== undefined && { timeUnit }),
    ...(signalUnit !== undefined && { signalUnit }),
    ...(voltsPerUnit !== undefined &&
      (isPercent
        ? { fullScale: `${voltsPerUnit * 100}` }
        : // One count told by itself is that of a converter of no bits.
          { bits: '0', fullScale: `${voltsPerUnit}` })),
    ...(sound && {
      soundFullScale: `${sound.fullScale}`,
      attenuation: `${sound.attenuation}`,
      microphone: sound.microphoneBias,
    }),
  };
}

/** How recordings are to be read by what the choosers hold; what is not whole yet is left out, so that the file's own reading says what is missing. */
export function readByOf(texts: ReadingTexts, isSound: boolean): ReadBy {
  if (isSound) {
    const [fullScale, attenuation] = [numberOf(texts.soundFullScale), numberOf(texts.attenuation)];
    const isWhole = fullScale !== undefined && attenuation !== undefined;
    if (!isWhole || texts.microphone !== 'off') return {};
    return { sound: { fullScale, attenuation, microphoneBias: 'off' } };
  }
  const { timeColumn, signalColumn, supplyColumn, timeUnit, signalUnit } = texts;
  const rate = numberOf(texts.rate);
  const voltsPerUnit = scaleOf(texts);
  const text = {
    ...(timeColumn === 'none'
      ? rate !== undefined && { sampleRate: rate }
      : {
          ...(timeColumn !== '' && { timeColumn: Number(timeColumn) }),
          ...(timeUnit !== '' && { timeUnit: timeUnit as 's' | 'ms' | 'µs' }),
        }),
    ...(signalColumn !== '' && { signalColumn: Number(signalColumn) }),
    ...(supplyColumn !== '' && { supplyColumn: Number(supplyColumn) }),
    ...(signalUnit !== '' && { signalUnit: signalUnit as 'V' | 'mV' | 'counts' | '%' }),
    ...(voltsPerUnit !== undefined && { voltsPerUnit }),
  };
  return Object.keys(text).length > 0 ? { text } : {};
}

/** Volts of one count or one percent. */
function scaleOf({ signalUnit, bits, fullScale }: ReadingTexts): number | undefined {
  const volts = numberOf(fullScale);
  if (volts === undefined) return undefined;
  if (signalUnit === '%') return volts / 100;
  const width = bits.trim() === '0' ? 0 : numberOf(bits);
  if (signalUnit !== 'counts' || width === undefined || width > 32) return undefined;
  return volts / 2 ** width;
}

/** A number above 0, with a point or a comma; undefined where it is none. */
function numberOf(text: string): number | undefined {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && value > 0 && value < 1e12 ? value : undefined;
}
