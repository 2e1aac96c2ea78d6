import type { Seconds, Volts } from '@truesweep/core';
import type { RecorderPlan } from './plan.js';
import type { RandomStream } from './randomStream.js';

/** What the recorder wrote, and what it would have written without noise, steps and instrument error. */
export interface Recording {
  readonly time: Float64Array;
  readonly signal: Float64Array;
  /** The true instants of the samples (ends of the aperture). */
  readonly instant: Float64Array;
  readonly noiseFree: Float64Array;
  /** The same without the faults. */
  readonly faultless: Float64Array;
}

/** Forms a recorder's samples from the voltage at its input: picked or averaged, hummed and noised upon, rounded and clipped. */
export function recording(
  recorder: RecorderPlan,
  volts: Float64Array,
  sound: Float64Array,
  step: Seconds,
  random: RandomStream,
): Recording {
  const instant = instants(recorder, (volts.length - 1) * step, random);
  const noiseFree = formed(recorder, volts, step, instant);
  const faultless = volts === sound ? noiseFree : formed(recorder, sound, step, instant);
  const hum = humOf(recorder, random);
  const signal = new Float64Array(instant.length);
  for (let i = 0; i < signal.length; i++) {
    const disturbed = noiseFree[i]! + hum(instant[i]!) + recorder.noise * random.normal();
    signal[i] = written(recorder, disturbed);
  }
  return {
    time: stamps(recorder, instant, random),
    signal,
    instant,
    noiseFree: noiseFree.map((value) => clipped(recorder, value)),
    faultless: faultless.map((value) => clipped(recorder, value)),
  };
}

function instants(
  { interval, aperture, gaps }: RecorderPlan,
  duration: Seconds,
  random: RandomStream,
): Float64Array {
  const first = aperture + interval * random.uniform();
  const all = new Float64Array(Math.max(2, Math.floor((duration - first) / interval) + 1));
  let count = 0;
  for (let i = 0; i < all.length; i++) {
    const at = Math.min(duration, first + i * interval);
    if (gaps.some((gap) => at > gap.time && at < gap.time + gap.seconds)) continue;
    all[count++] = at;
  }
  return all.slice(0, count);
}

function stamps(
  { interval, jitter }: RecorderPlan,
  instant: Float64Array,
  random: RandomStream,
): Float64Array {
  if (jitter === 0) return instant;
  const most = 0.45 * interval;
  return instant.map((at) => at + Math.max(-most, Math.min(most, jitter * random.normal())));
}

function formed(
  { aperture }: RecorderPlan,
  volts: Float64Array,
  step: Seconds,
  instant: Float64Array,
): Float64Array {
  if (aperture === 0) return instant.map((at) => volts[Math.round(at / step)]!);
  const sums = new Float64Array(volts.length + 1);
  for (let i = 0; i < volts.length; i++) sums[i + 1] = sums[i]! + volts[i]!;
  return instant.map((at) => {
    const to = Math.min(volts.length, Math.round(at / step) + 1);
    const from = Math.max(0, to - Math.max(1, Math.round(aperture / step)));
    return (sums[to]! - sums[from]!) / (to - from);
  });
}

/** Mains hum as it is recorded: an average over an aperture leaves less of it. */
function humOf({ hum, aperture }: RecorderPlan, random: RandomStream): (at: Seconds) => Volts {
  if (!hum) return () => 0;
  const waves = [1, ...hum.harmonics].map((amplitude, i) => {
    const omega = 2 * Math.PI * hum.hertz * (i + 1);
    const half = (omega * aperture) / 2;
    const left = half === 0 ? 1 : Math.sin(half) / half;
    return {
      omega,
      amplitude: hum.volts * amplitude * left,
      phase: 2 * Math.PI * random.uniform(),
    };
  });
  return (at) => {
    let sum = 0;
    for (const { omega, amplitude, phase } of waves)
      sum += amplitude * Math.sin(omega * at + phase);
    return sum;
  };
}

function written(recorder: RecorderPlan, value: Volts): Volts {
  const { offset, gain, step, low } = recorder;
  const measured = clipped(recorder, value * (1 + gain) + offset);
  return low + step * Math.round((measured - low) / step);
}

function clipped({ low, high }: RecorderPlan, value: Volts): Volts {
  return Math.min(high, Math.max(low, value));
}
