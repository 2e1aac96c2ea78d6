import { checkKind, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { Celsius, Fraction } from '../units.js';

/** What a winding's wire is of: how its resistance grows with temperature. */
export type Conductor =
  /** Annealed copper: k = 234.5 °C. */
  | { readonly kind: 'copper' }
  /** Electrical-grade aluminium: k = 225 °C; another source has 228. */
  | { readonly kind: 'aluminium' }
  /** Known by its conductivity, such as thin tinned copper wire of 0.93: its coefficient at 20 °C is 0.00393/K times that. */
  | {
      readonly kind: 'conductivity';
      /** Conductivity as a fraction of annealed copper's, 0.1 to 1.1. */
      readonly conductivity: Fraction;
    }
  /** Known by its constant. */
  | {
      readonly kind: 'constant';
      /** The temperature below 0 °C at which its straight line would reach 0 Ω, °C, without sign: 100 to 10,000. */
      readonly k: Celsius;
    };

export const conductorRules: Readonly<Record<Conductor['kind'], FieldRules>> = {
  copper: {},
  aluminium: {},
  conductivity: { conductivity: between(0.1, 1.1) },
  constant: { k: between(100, 10_000, '°C') },
};

/** The rule of a field that holds a conductor. */
export function checkConductor(value: unknown, path: string): void {
  checkKind(value, path, conductorRules);
}

/**
 * The constant k of a conductor: its resistance is proportional to k + t, with t in °C.
 *
 * Source: 234.5 for copper and 225.0 for electrical-grade aluminium: UL, clause 49.8; IEC 60034 takes 235 for copper. Of a conductivity c:
 * α₂₀ = 0.00393·c (an ohmmeter's manual), so k = 1/α₂₀ − 20.
 *
 * @returns °C, without sign.
 * @throws InputError at `conductor…`.
 *
 * @example
 * conductorConstant({ kind: 'copper' }) // => 234.5
 * conductorConstant({ kind: 'conductivity', conductivity: 0.93 }) // => ≈ 253.6
 */
export function conductorConstant(conductor: Conductor): Celsius {
  checkConductor(conductor, 'conductor');
  return constantOf(conductor);
}

/** {@link conductorConstant} of what was checked already; of copper when left out. */
export function constantOf(conductor: Conductor = { kind: 'copper' }): Celsius {
  if (conductor.kind === 'constant') return conductor.k;
  if (conductor.kind === 'conductivity') return 1 / (0.00393 * conductor.conductivity) - 20;
  return conductor.kind === 'copper' ? 234.5 : 225;
}
