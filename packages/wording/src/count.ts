import { say } from './say.js';

export function count(number: number, what: string): string {
  return say`${number} ${what}${number === 1 ? '' : 's'}`;
}
