import { formatQuantity, type LimiterChoice, type NoLimiter, type Ohms } from '@truesweep/core';
import { limiterSentences } from './planWords.js';
import { whole } from './whole.js';

/**
 * What to take as limiting resistor, in sentences.
 *
 * @param own The resistor that is planned already, Ω; where it is enough, that is said instead of another's price.
 *
 * @example
 * import { chooseLimiter } from '@truesweep/core';
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };
 * const choice = chooseLimiter(circuit, { wiper: { amps: 0.005, shortTerm: 0.005 } });
 * limiterAdviceSentences(choice)[0].startsWith('Limiting resistor: at least 1\u00a0kΩ; take 1\u00a0kΩ') // => true
 * limiterAdviceSentences(choice, 1500)[0] // => 'Your 1.5\u00a0kΩ is enough: at least 1\u00a0kΩ is needed.'
 */
export function limiterAdviceSentences(
  choice: LimiterChoice | NoLimiter,
  own?: Ohms,
): readonly string[] {
  return whole(choice, 'choice', () => saidOf(choice, own));
}

function saidOf(choice: LimiterChoice | NoLimiter, own: Ohms | undefined): readonly string[] {
  if (choice.kind === 'impossible') return [limiterSentences.impossible(choice.binding.part)];
  const { smallest, preferred, powerRating, price, notGiven } = choice;
  const given = {
    smallest: formatQuantity(smallest, 'Ω', { trim: true }),
    preferred: formatQuantity(preferred, 'Ω', { trim: true }),
    spanLost: formatQuantity(price.spanLost, '%', { digits: 2, trim: true }),
    ...(powerRating !== undefined && {
      power: formatQuantity(powerRating, 'W', { trim: true }),
    }),
  };
  const isEnough = own !== undefined && smallest > 0 && own >= smallest && choice.kind === 'chosen';
  return [
    isEnough
      ? limiterSentences.enough(formatQuantity(own, 'Ω', { trim: true }), given.smallest)
      : smallest === 0
        ? limiterSentences.noneNeeded
        : limiterSentences[choice.kind](given),
    ...(smallest > 0 ? [limiterSentences.asNamed] : []),
    ...(notGiven.length > 0 ? [limiterSentences.notGiven(notGiven)] : []),
  ];
}
