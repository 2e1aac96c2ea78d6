import { type Draws, drawsOf } from './random.js';
import { outsideBy, stateOf, type Truth } from './truth.js';

/** A coil on a bench as it is played here: what is true of it, and what a technician would enter. It knows nothing of how it will be judged. */
export interface WindingCase extends Truth {
  readonly limits: {
    readonly low: number;
    readonly high: number;
    readonly at: number;
    readonly conductor?: { readonly kind: 'conductivity'; readonly conductivity: number };
  };
  readonly readings: readonly {
    readonly ohms: number;
    readonly uncertainty: number;
    readonly leads?: number;
    readonly temperature: number;
    readonly temperatureUncertainty: number;
  }[];
}

/** What the winding has, as a multiple of its nominal value: shorted turns, a bad joint, another part, no connection. */
function faultOf(draws: Draws, nominal: number): number {
  const kind = draws.oneOf(['shorted', 'joint', 'other', 'open'] as const);
  if (kind === 'shorted') return nominal * draws.between(0.1, 0.95);
  if (kind === 'joint') return nominal + draws.log(0.2, 500);
  return kind === 'other' ? nominal * draws.log(0.2, 5) : Infinity;
}

/** Draws until what is drawn lies within ±1. */
function within(draws: Draws, deviation: number): number {
  for (;;) {
    const at = draws.normal(deviation);
    if (Math.abs(at) <= 1) return at;
  }
}

export function windingCase(seed: number): WindingCase {
  const draws = drawsOf(seed);
  const nominal = draws.log(0.5, 15_000);
  const tolerance = draws.oneOf([0.05, 0.1, 0.15, 0.2]);
  const at = draws.oneOf([20, 20, 20, 25]);
  const limits = { low: nominal * (1 - tolerance), high: nominal * (1 + tolerance), at };
  // Its wire: copper as pure as it comes, or tinned thin wire that is told as such.
  const isTinned = draws.chance(0.1);
  const k = isTinned ? 1 / (0.00393 * 0.93) - 20 : 234.5 + draws.normal(0.5);
  const cold = draws.chance(0.5)
    ? faultOf(draws, nominal)
    : nominal * (1 + tolerance * within(draws, 0.4));
  const meter = { fraction: draws.log(0.001, 0.02), ohms: draws.log(0.001, 0.05) };
  const thermometer = draws.oneOf([0.3, 0.5, 1, 2]);
  const hasLeads = draws.chance(nominal < 10 ? 0.9 : 0.4);
  let adequate = true;
  let outside = 0;
  const readings = Array.from({ length: draws.oneOf([1, 1, 2, 3]) }, () => {
    const celsius = draws.between(-5, 95);
    const grown = (k + celsius) / (k + at);
    const ohms = cold * grown;
    const leads = draws.between(0.05, 0.25);
    // Left out, leads may be anything up to a fifth of an ohm.
    const ofLeads = hasLeads ? 0 : 0.06;
    const uncertaintyAt = (value: number) =>
      Math.hypot(
        meter.fraction * value + meter.ohms,
        ofLeads,
        (value / (k + celsius)) * thermometer,
      );
    const [low, high] = [limits.low * grown, limits.high * grown];
    const atLimit = uncertaintyAt(Math.min(Math.max(ohms, low), high));
    adequate &&= high - low >= 10 * atLimit;
    outside = Math.max(
      outside,
      outsideBy(ohms, low, high, uncertaintyAt(Math.min(ohms, 2 * high))),
    );
    const uncertainty = ohms < Infinity ? meter.fraction * ohms + meter.ohms : 0;
    const shown = Math.max(0, ohms + leads + (ohms < Infinity ? draws.normal(uncertainty) : 0));
    return {
      ohms: shown,
      uncertainty,
      ...(hasLeads && { leads }),
      temperature: celsius + draws.normal(thermometer),
      temperatureUncertainty: thermometer,
    };
  });
  return {
    state: stateOf(outside),
    adequate,
    limits: {
      ...limits,
      ...(isTinned && { conductor: { kind: 'conductivity', conductivity: 0.93 } }),
    },
    readings,
  };
}
