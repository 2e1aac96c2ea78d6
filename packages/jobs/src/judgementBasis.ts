import type { Criteria, Expectation } from '@truesweep/core';
import type { Job } from './job.js';
import { jobCriteria } from './jobCriteria.js';
import { jobExpectation } from './jobExpectation.js';

/** What every recording of a job is judged by. */
export interface JudgementBasis {
  readonly expected: Expectation;
  readonly criteria: Criteria;
}

const worked = new WeakMap<Job, JudgementBasis>();

/** What a job's recordings are judged by, worked out once. */
export function judgementBasis(job: Job): JudgementBasis {
  const basis = worked.get(job) ?? { expected: jobExpectation(job), criteria: jobCriteria(job) };
  worked.set(job, basis);
  return basis;
}
