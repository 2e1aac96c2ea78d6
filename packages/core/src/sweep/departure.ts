/** A departure on the scale of the span, with the bins that it covers. */
export interface Departure {
  readonly kind: 'dropout' | 'spike' | 'step' | 'dead-spot' | 'rough';
  readonly from: number;
  /** Last bin. */
  readonly to: number;
  /** Largest departure from the path as a fraction of the span; positive toward open. */
  readonly depth: number;
}
