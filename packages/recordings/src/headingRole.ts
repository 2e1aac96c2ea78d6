import type { Heading } from './readHeading.js';

/** What a column can be, going by its heading. */
export type HeadingRole =
  | 'time'
  | 'signal'
  | 'voltage'
  | 'supply'
  | 'position'
  | 'count'
  | 'unknown';

/** Words in a heading that tell the role, the surest first. */
const roleWords: readonly (readonly [HeadingRole, RegExp])[] = [
  ['supply', /^(supply|source|reference|ref|vref)$/],
  ['signal', /^(signal|wiper|output|sensor|tps|throttle)$/],
  ['voltage', /^(voltage|volts?|millivolts?)$/],
  ['time', /^(t|time|elapsed|timestamp|datetime|clock|seconds|milliseconds)$/],
  ['position', /^(position|angle|travel|degrees?|deg)$/],
  ['count', /^(samples?|index|n|no|nr|row|point|count)$/],
];

/** Tells from a heading's unit, then from its words, what the column holds. */
export function headingRole(heading: Heading): HeadingRole {
  if (heading.timeUnit) return 'time';
  const parts = heading.name.toLowerCase().split(/[^a-z]+/);
  const role = roleWords.find(([, pattern]) => parts.some((part) => pattern.test(part)))?.[0];
  if (heading.signalUnit === '%' && role === 'position') return role;
  if (heading.signalUnit) return role === 'supply' || role === 'signal' ? role : 'voltage';
  return role ?? (heading.name === '#' ? 'count' : 'unknown');
}
