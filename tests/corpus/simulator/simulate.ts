import type { Seconds, Volts } from '@truesweep/core';
import { durationOf, type Motion, motion } from './motion.js';
import { liftedLevel } from './outputTable.js';
import { type Passage, passages } from './passages.js';
import type { CorpusPlan } from './plan.js';
import { randomStream } from './randomStream.js';
import { type Recording, recording } from './recording.js';
import { signalAtInput } from './signalAtInput.js';

/** A simulated recording with all that is known of how it came about. */
export interface Simulated {
  readonly recording: Recording;
  readonly motion: Motion;
  readonly passages: readonly Passage[];
  readonly liftedLevel: Volts;
}

/** Plays a plan; the same plan always gives the same recording. */
export function simulate(plan: CorpusPlan): Simulated {
  const step = fineStep(plan);
  const moved = motion(plan.moves, plan.hand, step, randomStream(plan.seed));
  const faulty = (faults: CorpusPlan['faults']) =>
    signalAtInput(plan, faults, moved.travel, step, randomStream(plan.seed ^ 0x2545f491));
  const sound = faulty([]);
  const volts = plan.faults.length > 0 ? faulty(plan.faults) : sound;
  return {
    recording: recording(plan.recorder, volts, sound, step, randomStream(plan.seed ^ 0x1b873593)),
    motion: moved,
    passages: passages(plan, moved),
    liftedLevel: liftedLevel(plan.actual),
  };
}

/** Fine enough for the recorder and for chatter, yet no more points than a case can afford. */
function fineStep({ recorder, moves }: CorpusPlan): Seconds {
  if (recorder.interval <= 1e-4) return 5e-5;
  return durationOf(moves) > 25 ? 2e-4 : 1e-4;
}
