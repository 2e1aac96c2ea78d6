import { dropoutOf, exampleInstruments } from '@truesweep/core';
import { explainDropoutChance, type Working, whereWritten } from '@truesweep/explain';
import type { Job } from '@truesweep/jobs';
import { circuitWithoutInstrument, type JobAdvice } from './adviseOnJob.js';
import { ownInstrument } from './ownInstrument.js';

/** The chance of the usual instruments and the job's own to show the spot. */
export function instrumentsWorkings(job: Job, { sought, own }: JobAdvice): readonly Working[] {
  const circuit = circuitWithoutInstrument(job);
  const { travel, width, speed, passes } = sought;
  return whereWritten(
    ...[ownInstrument(job, own.interval), ...exampleInstruments].map((instrument) => () => {
      const dropout = dropoutOf(circuit, instrument, travel, width / speed, speed);
      return explainDropoutChance(instrument, dropout, passes);
    }),
  );
}
