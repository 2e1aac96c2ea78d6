import type { TestProject } from 'vitest/node';
import { redisProgram } from './redisProgram.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** Why no Redis can be started here; empty where one can. */
    noRedis: string;
  }
}

/** Finds or fetches Redis once for all files. */
export default function setup(project: TestProject) {
  const program = redisProgram();
  const why = 'why' in program ? program.why : '';
  if (why !== '') console.log(`The tests of the queue are skipped: ${why}.`);
  project.provide('noRedis', why);
}
