import type { Circuit, Tolerances } from '@truesweep/core';
import { outputOf } from '../simulator/outputTable.js';
import type { RandomStream } from '../simulator/randomStream.js';

export interface Hookup {
  readonly nominal: Circuit;
  readonly actual: Circuit;
  readonly tolerances: Tolerances;
}

/** How much of its tolerance a sound part uses at most. */
const used = 0.7;

/** Any sensor on any bench: nominal values, tolerances, and true values inside them. */
export function drawHookup(random: RandomStream): Hookup {
  for (;;) {
    const nominal = drawNominal(random);
    const { closedPosition = 0, openPosition = 1 } = nominal.sensor;
    const span = Math.abs(outputOf(nominal, openPosition) - outputOf(nominal, closedPosition));
    if (span < 0.15 * nominal.source.volts) continue;
    const tolerances = drawTolerances(random);
    return { nominal, tolerances, actual: drawActual(nominal, tolerances, random) };
  }
}

function drawNominal(random: RandomStream): Circuit {
  const volts = random.chance(0.5) ? 5 : random.between(3.3, 14);
  const low = random.between(0.05, 0.15);
  const high = random.between(0.8, 0.95);
  const [closedPosition, openPosition] = random.chance(0.7) ? [low, high] : [high, low];
  return {
    source: { volts },
    limiter: random.pick([0, 0, 100, 220, 470, 1000, 1000, 2200, 4700]),
    sensor: { track: random.logBetween(500, 20_000), closedPosition, openPosition },
    load: drawLoad(random),
  };
}

function drawLoad(random: RandomStream): Circuit['load'] {
  if (random.chance(0.75)) return { pullDown: random.pick([10e6, 10e6, 1e6, 470e3, 100e3, 47e3]) };
  const ohms = random.pick([47e3, 100e3, 470e3]);
  const pullUp = random.chance(0.5) ? { ohms, volts: 5 } : { ohms, from: 'source' as const };
  return { pullDown: random.pick([10e6, 1e6]), pullUp };
}

function drawTolerances(random: RandomStream): Tolerances {
  return {
    source: random.between(0.005, 0.02),
    limiter: random.pick([0.01, 0.05]),
    track: random.pick([0.1, 0.2]),
    pullDown: random.pick([0.01, 0.05]),
    pullUp: random.pick([0.01, 0.05]),
    pullUpVolts: random.between(0.005, 0.02),
    closedPosition: random.between(0.01, 0.03),
    openPosition: random.between(0.02, 0.04),
  };
}

function drawActual(nominal: Circuit, tolerances: Tolerances, random: RandomStream): Circuit {
  const off = (tolerance = 0): number => 1 + random.between(-used, used) * tolerance;
  const moved = (tolerance = 0): number => random.between(-used, used) * tolerance;
  const { source, limiter, sensor, load } = nominal;
  const { pullDown, pullUp } = load;
  return {
    source: { volts: source.volts * off(tolerances.source) },
    limiter: limiter * off(tolerances.limiter),
    sensor: {
      track: sensor.track * off(tolerances.track),
      closedPosition: sensor.closedPosition! + moved(tolerances.closedPosition),
      openPosition: sensor.openPosition! + moved(tolerances.openPosition),
    },
    load: {
      ...(pullDown !== undefined && { pullDown: pullDown * off(tolerances.pullDown) }),
      ...(pullUp && {
        pullUp:
          'volts' in pullUp
            ? {
                ohms: pullUp.ohms * off(tolerances.pullUp),
                volts: pullUp.volts * off(tolerances.pullUpVolts),
              }
            : { ...pullUp, ohms: pullUp.ohms * off(tolerances.pullUp) },
      }),
    },
  };
}
