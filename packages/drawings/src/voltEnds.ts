import { nice } from 'd3-array';

/** The ends of an axis of volts that holds zero and every reading, at round values. */
export function voltEnds(...readings: readonly ArrayLike<number>[]): [low: number, high: number] {
  let [least, most] = [0, 0];
  for (const list of readings) {
    for (let i = 0; i < list.length; i++) {
      least = Math.min(least, list[i]!);
      most = Math.max(most, list[i]!);
    }
  }
  return nice(least, most || 1, 5);
}
