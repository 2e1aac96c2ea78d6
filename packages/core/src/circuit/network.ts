/** A resistance between two nodes; 0 Ω joins them, ∞ Ω is no connection. Its current counts from `from` to `to`. */
export interface Resistor {
  readonly kind: 'resistor';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly ohms: number;
}

/** An ideal voltage source: `to` is held `volts` above `from`. Its current counts from `from` through the source to `to`. */
export interface VoltageSource {
  readonly kind: 'voltage';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly volts: number;
}

/** An ideal current source that drives `amps` from `from` through itself to `to`. */
export interface CurrentSource {
  readonly kind: 'current';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly amps: number;
}

export type Element = Resistor | VoltageSource | CurrentSource;

/** A circuit as a list of elements between named nodes; voltages count from the node `reference`. */
export interface Network {
  readonly reference: string;
  readonly elements: readonly Element[];
}
