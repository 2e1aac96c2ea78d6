import { say } from './say.js';
import { whole } from './whole.js';

/**
 * How far to turn a sensor for its closed reading.
 *
 * @example
 * settingSentences.again.startsWith('Then read again') // => true
 */
export const settingSentences = {
  turn: (turn: {
    readonly degrees: string;
    /** Expanded, degrees; left out where none was stated. */
    readonly uncertainty?: string;
    /** Whether it goes on in the direction of the first turn. */
    readonly onward: boolean;
  }): string => {
    return whole(turn, 'turn', () => {
      return say`From where the first reading was taken, turn the sensor by ${turn.degrees}°${turn.uncertainty ? say` (± ${turn.uncertainty}°)` : ''}, ${
        turn.onward ? 'the way you turned it' : 'against the way you turned it'
      }.`;
    });
  },
  noChange:
    'The two readings were taken at one angle, or differ by no more than their uncertainty: turn farther and read again.',
  again:
    'Then read again and repeat until it fits; the service manual says the reading that the machine wants.',
} as const;
