/**
 * A number that carries its unit in its type only. A plain number goes in anywhere; volts where ohms
 * are wanted is a type error. At run time it is the number itself, in SI units without prefix.
 */
export type Quantity<Unit extends string> = number & {
  /** Only in the type, and never there at run time. */
  readonly __unit?: Unit;
};

/** Electric potential difference, V. */
export type Volts = Quantity<'V'>;
/** Resistance, Ω. */
export type Ohms = Quantity<'Ω'>;
/** Current, A. */
export type Amps = Quantity<'A'>;
/** Power, W. */
export type Watts = Quantity<'W'>;
/** Time, s. */
export type Seconds = Quantity<'s'>;
/** Frequency, Hz. */
export type Hertz = Quantity<'Hz'>;
/** Capacitance, F. */
export type Farads = Quantity<'F'>;
/** Throttle travel as a fraction: 0 at the closed stop, 1 at the open stop. */
export type Travel = Quantity<'travel'>;
/** Place of the wiper as a fraction of the electrical track: 0 at the bottom end, 1 at the top end. */
export type Position = Quantity<'position'>;
/** A dimensionless fraction, such as a tolerance of 0.05 for ±5 %. */
export type Fraction = Quantity<'1'>;
/** Temperature, °C. */
export type Celsius = Quantity<'°C'>;
/** Angle, degrees. */
export type Degrees = Quantity<'°'>;
/** Pressure, Pa. */
export type Pascals = Quantity<'Pa'>;
/** Length or height, m. */
export type Metres = Quantity<'m'>;
/** Temperature difference, K. */
export type Kelvins = Quantity<'K'>;
