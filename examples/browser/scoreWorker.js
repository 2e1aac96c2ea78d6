// Judges sweeps away from the page: a recording of minutes doesn't hold it up.
import { expectation, scoreSweep } from './core/index.js';

self.addEventListener('message', ({ data: { circuit, tolerances, sweep } }) => {
  const { verdict, causes, findings } = scoreSweep(sweep, expectation(circuit, tolerances));
  self.postMessage({ verdict, causes, findings });
});
