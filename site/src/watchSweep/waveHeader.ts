/** What stands before the samples: RIFF, format and the size of the data, bytes. */
const headerBytes = 44;
const float = 3;
const sampleBytes = 4;

/**
 * The head of a RIFF WAVE file of floating-point samples of 32 bits on one channel (IBM and Microsoft, Multimedia Programming Interface and
 * Data Specifications 1.0, 1991; from memory).
 */
export function waveHeader(rate: number, samples: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(headerBytes);
  const view = new DataView(bytes.buffer);
  const data = samples * sampleBytes;
  for (const [at, text] of [
    [0, 'RIFF'],
    [8, 'WAVE'],
    [12, 'fmt '],
    [36, 'data'],
  ] as const)
    for (const [i, letter] of [...text].entries()) bytes[at + i] = letter.charCodeAt(0);
  view.setUint32(4, headerBytes - 8 + data, true);
  view.setUint32(16, 16, true);
  view.setUint16(20, float, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * sampleBytes, true);
  view.setUint16(32, sampleBytes, true);
  view.setUint16(34, 8 * sampleBytes, true);
  view.setUint32(40, data, true);
  return bytes;
}
