import type { ReadingWindow, Volts } from '@truesweep/core';
import type { Stage } from './simulator/motion.js';
import type { CorpusPlan } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';
import type { Outcome } from './truth.js';

interface RestReading {
  readonly reached: Stage['reached'];
  /** Middle value of the noise-free recorded samples. */
  readonly volts: Volts;
}

/** The readings of all rests at one end. */
function restReadings(
  end: 'closed' | 'open',
  plan: CorpusPlan,
  { motion, recording }: Simulated,
): readonly RestReading[] {
  const { instant, noiseFree } = recording;
  return motion.stages.flatMap((stage) => {
    const here = stage.kind === 'rest' && (end === 'open' ? stage.to === 1 : stage.to < 0.22);
    if (!here) return [];
    const from = stage.start + plan.recorder.aperture;
    const values = noiseFree
      .filter((_, i) => instant[i]! >= from && instant[i]! <= stage.end)
      .sort();
    return values.length > 0
      ? [{ reached: stage.reached, volts: values[values.length >> 1]! }]
      : [];
  });
}

/** How an end compares with its window, for every plausible way to take one reading from several rests. */
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
  const { step, uncertainty } = plan.recorder;
  const unsure = 2 * Math.hypot(uncertainty, step / Math.sqrt(12)) + 0.003 * span;
  const outcomes = new Set<Outcome>();
  for (const reading of readings)
    for (const off of [-unsure, 0, unsure])
      for (const marginal of [0.025 * span, Math.max(0.025 * span, unsure)])
        outcomes.add(compared(reading + off, window, marginal));
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
  const outcomes = new Set<Outcome>();
  const unsure = Math.max(0.003 * span, 0.7 * plan.recorder.step);
  for (const ways of [['hand'], ['spring'], ['hand', 'start']] as const) {
    const volts = rests
      .filter(({ reached }) => ways.some((way) => way === reached))
      .map((rest) => rest.volts);
    if (volts.length < 3) continue;
    const range = Math.max(...volts) - Math.min(...volts);
    for (const off of [-unsure, 0, unsure]) {
      const scatter = (range + off) / span;
      outcomes.add(scatter <= 0.03 ? 'conforms' : scatter <= 0.07 ? 'marginal' : 'fails');
    }
  }
  return worstOfWays(outcomes, rests);
}

/** Without three returns the same way nothing is judged. */
function worstOfWays(
  outcomes: ReadonlySet<Outcome>,
  rests: readonly RestReading[],
): readonly Outcome[] {
  const judged = (['hand', 'spring'] as const).some(
    (way) => rests.filter(({ reached }) => reached === way).length >= 3,
  );
  if (outcomes.size === 0) return ['conforms'];
  return judged ? [...outcomes] : [...new Set<Outcome>([...outcomes, 'conforms'])];
}
