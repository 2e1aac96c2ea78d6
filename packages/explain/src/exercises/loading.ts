import { type Circuit, operatingPoint, type Volts } from '@truesweep/core';
import { loadingExerciseWords as words } from '@truesweep/wording/working';
import { explainOperatingPoint } from '../circuit/explainOperatingPoint.js';
import { outputAt } from '../circuit/outputAt.js';
import { drawnBench, given, givenBench, sidesOf } from './benchParts.js';
import type { Draws } from './draws.js';
import type { Draft, ExerciseLevel } from './exercise.js';
import { quantityPart } from './parts.js';

/** The reading with a load: of the track alone, behind a limiter, or with a pull-up as well. */
export function loading(draw: Draws, level: ExerciseLevel): Draft {
  const bench = drawnBench(draw, level !== 'easy');
  const { position } = bench;
  const pullDown = draw.ohms('E12', 2200, 22_000);
  const { volts } = bench.circuit.source;
  const pullUp =
    level === 'hard'
      ? { ohms: draw.ohms('E12', 2200, 22_000), volts: draw.one([5, volts]) }
      : undefined;
  const circuit: Circuit = { ...bench.circuit, load: { pullDown, ...(pullUp && { pullUp }) } };
  const at = (changed: Partial<Circuit>) => outputAt({ ...circuit, ...changed }, position);
  const value = operatingPoint(circuit, position).output as Volts;
  const { up, down } = sidesOf(circuit, position);
  return {
    question: words.question({
      ...givenBench(bench),
      load: given(pullDown, 'Ω'),
      ...(pullUp && {
        pullUp: { ohms: given(pullUp.ohms, 'Ω'), volts: given(pullUp.volts, 'V') },
      }),
    }),
    hint: pullUp ? words.hintWithPullUp : words.hint,
    parts: [
      quantityPart({ id: 'reading', asks: words.asks, unit: 'V', value }, [
        [at({ load: {} }), words.mistakes.forgotLoad],
        [at({ limiter: 0 }), words.mistakes.forgotLimiter],
        ...(pullUp
          ? ([
              [at({ load: { pullDown } }), words.mistakes.forgotPullUp],
              [at({ load: { pullUp } }), words.mistakes.forgotPullDown],
              [
                at({ load: { pullDown: 1 / (1 / pullDown + 1 / pullUp.ohms) } }),
                words.mistakes.pullUpToCommon,
              ],
            ] as const)
          : ([
              [(volts * (down + pullDown)) / (up + down + pullDown), words.mistakes.added],
              [
                (at({ load: {} }) * pullDown) / (pullDown + circuit.sensor.track),
                words.mistakes.wholeTrack,
              ],
              [(volts * pullDown) / (up + pullDown), words.mistakes.loadAlone],
            ] as const)),
      ]),
    ],
    working: () => explainOperatingPoint(circuit, position),
  };
}
