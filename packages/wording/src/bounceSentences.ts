import type { StateChange, SwitchBounce } from '@truesweep/core';
import { formatAlike } from './formatAlike.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * How a recorded switch changed, a sentence for each change. No limit for a bounce was found in a source, so that none is judged.
 *
 * @example
 * const change = { time: 1.2, from: 'low', to: 'high', bounced: 0.003, returns: 2, resolution: 0.0005 } as const;
 * bounceSentences({ begins: 'low', changes: [change] }) // => ['At 1.20 s it went up; it bounced for 3.00 ms and went back 2 times.']
 */
export function bounceSentences(bounce: SwitchBounce): readonly string[] {
  return whole(bounce, 'bounce', () =>
    bounce.changes.length === 0 ? ['It never changed.'] : bounce.changes.map(sentenceOf),
  );
}

function sentenceOf({ time, from, to, bounced, returns, resolution }: StateChange): string {
  const at = seconds(time);
  if (from === to) return say`At ${at} it was interrupted for ${seconds(bounced)}.`;
  const way = to === 'high' ? 'up' : 'down';
  if (returns === 0) {
    return say`At ${at} it went ${way}; no bounce of ${seconds(resolution)} or longer shows.`;
  }
  const times = returns === 1 ? 'once' : say`${returns} times`;
  return say`At ${at} it went ${way}; it bounced for ${seconds(bounced)} and went back ${times}.`;
}

function seconds(value: number): string {
  const { numbers, unit } = formatAlike([value], 's');
  return say`${numbers[0]!} ${unit}`;
}
