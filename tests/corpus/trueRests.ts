import type { ReadingWindow, Volts } from '@truesweep/core';
import { firstAtOrAfter } from './firstAtOrAfter.js';
import type { Stage } from './simulator/motion.js';
import type { CorpusPlan } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';
import type { Outcome } from './truth.js';

interface RestReading {
  readonly reached: Stage['reached'];
  /** Middle value of the noise-free recorded samples. */
  readonly volts: Volts;
}

/** Returns to closed stay below this travel, strokes that turn back half-way above it. */
const closedBelow = 0.2;

/** Share of the span by which averages of noise and of the last movement may be off. */
const readingShare = 0.003;

/** The readings of all rests at one end, but for those at the recorder's limits. */
function restReadings(
  end: 'closed' | 'open',
  plan: CorpusPlan,
  { motion, recording }: Simulated,
): readonly RestReading[] {
  const { instant, noiseFree } = recording;
  const { aperture, low, high, step } = plan.recorder;
  return motion.stages.flatMap((stage) => {
    const here =
      stage.kind === 'rest' && (end === 'open' ? stage.to === 1 : stage.to < closedBelow);
    if (!here) return [];
    const from = firstAtOrAfter(instant, stage.start + aperture);
    const values = noiseFree.slice(from, firstAtOrAfter(instant, stage.end)).sort();
    const volts = values[values.length >> 1];
    if (volts === undefined || volts < low + step || volts > high - step) return [];
    return [{ reached: stage.reached, volts }];
  });
}

/**
 * How an end compares with its window, for every plausible way to take one reading from several rests: as it truly is, as this
 * instrument shows it, and either way by the little that an average may be off.
 */
export function endOutcomes(
  end: 'closed' | 'open',
  plan: CorpusPlan,
  simulated: Simulated,
  window: ReadingWindow,
  span: Volts,
): readonly Outcome[] {
  const volts = restReadings(end, plan, simulated).map((reading) => reading.volts);
  if (volts.length === 0) return ['conforms'];
  const sorted = [...volts].sort((a, b) => a - b);
  const mean = volts.reduce((sum, value) => sum + value, 0) / volts.length;
  const readings = [mean, sorted[0]!, sorted.at(-1)!, sorted[sorted.length >> 1]!];
  const { step, gain, offset } = plan.recorder;
  const little = readingShare * span + step / 4;
  const marginal = Math.max(0.025 * span, 2 * (plan.told.uncertainty ?? 0));
  const outcomes = new Set<Outcome>();
  for (const reading of readings)
    for (const shown of [reading, reading * (1 + gain) + offset])
      for (const off of [-little, 0, little]) outcomes.add(compared(shown + off, window, marginal));
  return [...outcomes];
}

function compared(reading: Volts, { low, high }: ReadingWindow, marginal: Volts): Outcome {
  const excess = Math.max(low - reading, reading - high);
  if (excess <= 0) return 'conforms';
  return excess <= marginal ? 'marginal' : 'fails';
}

/** How the range of at least three returns reached the same way compares with 3 % and 7 % of span. */
export function closedRestOutcomes(
  plan: CorpusPlan,
  simulated: Simulated,
  span: Volts,
): readonly Outcome[] {
  const rests = restReadings('closed', plan, simulated);
  const unsure = readingShare * span + plan.recorder.step / 2;
  const ofWays = (...ways: readonly Stage['reached'][]): readonly Outcome[] => {
    const volts = rests.filter(({ reached }) => ways.includes(reached)).map((rest) => rest.volts);
    if (volts.length < 3) return ['conforms'];
    const range = Math.max(...volts) - Math.min(...volts);
    return [-unsure, 0, unsure].map((off) => scattered((range + off) / span));
  };
  // The first rest was reached nobody knows how; who counts it as a return by hand is not wrong.
  const outcomes = new Set<Outcome>();
  for (const byHand of [...ofWays('hand'), ...ofWays('hand', 'start')])
    for (const bySpring of ofWays('spring')) outcomes.add(worse(byHand, bySpring));
  return [...outcomes];
}

function scattered(share: number): Outcome {
  if (share <= 0.03) return 'conforms';
  return share <= 0.07 ? 'marginal' : 'fails';
}

/** The worse of two outcomes. */
export function worse(one: Outcome, other: Outcome): Outcome {
  if (one === 'fails' || other === 'fails') return 'fails';
  return one === 'marginal' ? one : other;
}
