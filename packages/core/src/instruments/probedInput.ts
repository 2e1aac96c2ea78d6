import { checkFields } from '../fields.js';
import { above0, positive, refuse } from '../guard.js';
import type { Farads, Ohms } from '../units.js';

/** An input as the signal meets it. */
export interface ProbedInput {
  /** Its resistance, Ω, above 0. */
  readonly inputOhms: Ohms;
  /** Its capacitance, F, above 0. */
  readonly inputFarads: Farads;
}

/**
 * What the tip of a probe loads a signal with. A ×1 probe adds its cable to the oscilloscope's input; a compensated ×10 probe puts nine times the
 * input's resistance in series and a ninth of the capacitance, so that a tenth of both is left to see (D. Ford, Silicon Chip, October 2009:
 * 1 MΩ ∥ 10 to 50 pF, cable 60 to 200 pF, 10 MΩ at the tip).
 *
 * @param input The oscilloscope's own input.
 * @param cable Capacitance of the probe's cable, F.
 *
 * @example
 * const input = { inputOhms: 1e6, inputFarads: 20e-12 };
 * const tip = probedInput(input, 10, 80e-12);
 * [tip.inputOhms, tip.inputFarads.toExponential(0)] // => [10000000, '1e-11']
 */
export function probedInput(input: ProbedInput, factor: 1 | 10, cable: Farads): ProbedInput {
  checkFields(input, 'input', { inputOhms: above0('Ω'), inputFarads: above0('F') });
  positive(cable, 'cable', 'F');
  if (factor !== 1 && factor !== 10) refuse(factor, 'factor', '1 or 10', 'unknown-choice');
  return {
    inputOhms: input.inputOhms * factor,
    inputFarads: (input.inputFarads + cable) / factor,
  };
}
