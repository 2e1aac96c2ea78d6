/** A mark on an axis: where it is and its number, in the axis' unit. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}
