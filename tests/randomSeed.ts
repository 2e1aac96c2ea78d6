import fc from 'fast-check';
import { soak } from './counts.js';

// `npm test` draws the same cases each time, so that a change and not chance makes it fail; a soak draws new ones.
if (soak === 1) fc.configureGlobal({ seed: 20_260_401 });
