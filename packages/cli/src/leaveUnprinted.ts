import { brokenOutputSentence } from '@truesweep/wording';
import { errorLine } from './errorLine.js';
import { brokenOutputCode } from './exitCodes.js';

/** Ends the program where the standard output takes no more; silent where its reader left early, as `head` does. */
export function leaveUnprinted({ code = '' }: NodeJS.ErrnoException): never {
  if (code !== 'EPIPE') process.stderr.write(errorLine(brokenOutputSentence(code)));
  process.exit(brokenOutputCode);
}
