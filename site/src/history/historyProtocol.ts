import type { ShelfSensor } from '../shelf/shelf.js';
import type { ListedSensor } from './listedSensors.js';
import type { SensorView } from './sensorView.js';

/** What the page asks of its worker. */
export type Asked =
  /** Takes what stands on the shelf in place of what stood there before. */
  | { readonly kind: 'shelf'; readonly sensors: readonly ShelfSensor[] }
  /** Takes files besides what was taken before. */
  | { readonly kind: 'files'; readonly files: readonly File[] }
  /** Forgets all files. */
  | { readonly kind: 'forget' }
  | { readonly kind: 'choose'; readonly sensor: string };

/** What was read of a file or of the shelf: what to say of it, and of what is damaged. */
export interface ReadSource {
  readonly said: string;
  readonly damaged: readonly string[];
  /** Whether nothing of it was read. */
  readonly refused: boolean;
}

/** What the worker answers. */
export type Answered =
  | { readonly kind: 'computing' }
  | {
      readonly kind: 'list';
      readonly sensors: readonly ListedSensor[];
      readonly shelf?: ReadSource;
      readonly files: readonly ReadSource[];
    }
  | { readonly kind: 'sensor'; readonly view: SensorView };
