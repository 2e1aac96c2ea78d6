import { brokenOutputSentence } from '@truesweep/wording';
import { brokenOutputCode } from './exitCodes.js';

/** Ends the program where the standard output takes no more; silent where its reader left early, as `head` does. */
export function leaveUnprinted({ code = '' }: NodeJS.ErrnoException): never {
  if (code !== 'EPIPE') process.stderr.write(`truesweep: ${brokenOutputSentence(code)}\n`);
  process.exit(brokenOutputCode);
}
