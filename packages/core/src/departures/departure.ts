/** A departure on the scale of the span, with the bins that it covers. */
export interface Departure {
  readonly kind: 'dropout' | 'spike' | 'step' | 'dead-spot' | 'rough';
  readonly from: number;
  /** Last bin. */
  readonly to: number;
  /** Largest departure from the path as a fraction of the span; positive toward open. */
  readonly depth: number;
  /** Visible on both sides of the path. */
  readonly bothWays?: boolean;
  readonly evidence?: number;
}

/** Bins from one to another, both included. */
export type Span = Pick<Departure, 'from' | 'to'>;

/** Something that lies off the path, before its kind is known. */
export interface Excursion {
  readonly from: number;
  readonly to: number;
  /** Farthest below and above the path; 0 or negative, 0 or positive. */
  readonly below: number;
  readonly above: number;
  /** Level of the path at its deepest. */
  readonly level: number;
  /** How often it changed from one side of the path to the other. */
  readonly swings: number;
  readonly evidence?: number;
}
