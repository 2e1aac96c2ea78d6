/**
 * A part between two nodes; its current counts from `from` through it to `to`. An ideal source is what it is at
 * rest and what it drives: a voltage source 0 Ω with its volts, a current source ∞ Ω with its amps.
 */
export interface Element {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** 0 Ω joins the nodes, ∞ Ω is no connection. */
  readonly ohms: number;
  /** How far a voltage source holds `to` above `from`. */
  readonly volts?: number;
  /** What a current source drives from `from` through itself to `to`. */
  readonly amps?: number;
}

/** A circuit as a list of elements between named nodes; voltages count from the node `reference`. */
export interface Network {
  readonly reference: string;
  readonly elements: readonly Element[];
}
