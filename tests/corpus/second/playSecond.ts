import type { Expectation, Finding, Recorder, Seconds, Sweep, Travel } from '@truesweep/core';
import { randomStream } from '../simulator/randomStream.js';
import { drawBench } from './bench.js';
import { addFault, type FaultName, faultNames } from './faults.js';
import { drawRecorder, recorded } from './recorder.js';
import { drawStrokes } from './strokes.js';

/** A passage over a fault as it was recorded. */
export interface SecondEvent {
  readonly kinds: readonly Finding['kind'][];
  readonly start: Seconds;
  readonly end: Seconds;
  readonly travel: Travel;
  /** Its depth over the smallest visible departure. */
  readonly ratio: number;
  readonly snap: boolean;
}

export interface SecondCase {
  readonly fault: FaultName | undefined;
  readonly expected: Expectation;
  readonly told: Recorder;
  readonly sweep: Sweep;
  readonly events: readonly SecondEvent[];
  /** The smallest visible departure as a part of the span. */
  readonly visible: number;
}

/** Sound sensors have even seeds, faulty ones odd ones. */
export function playSecond(seed: number): SecondCase {
  const random = randomStream(Math.imul(seed + 77, 0x27d4eb2f) ^ 0x165667b1);
  const fault = seed % 2 === 0 ? undefined : faultNames[(seed >> 1) % faultNames.length]!;
  const bench = drawBench(random);
  const recorder = drawRecorder(bench, random);
  const stride = Math.max(1, Math.ceil(recorder.interval / 1e-4));
  const step = recorder.interval / stride;
  const brisk = random.chance(0.3);
  const manner = {
    cycles: random.whole(3, 5),
    stroke: brisk ? ([0.3, 1] as const) : ([0.8, 4] as const),
  };
  const strokes = drawStrokes(manner, step, random);
  const { travel, snap } = strokes;
  const sound = travel.map(bench.output);
  const volts = sound.slice();
  const depth = Math.max(
    2.5 * recorder.visible,
    random.logBetween(2.5 * recorder.visible, Math.max(0.3 * bench.span, 3 * recorder.visible)),
  );
  const passages = fault ? addFault(fault, volts, strokes, bench, depth, random) : [];
  const events = passages.map(({ kinds, from, to }): SecondEvent => {
    let most = 0;
    // Only what falls on a sample was recorded.
    for (
      let i = Math.ceil(from / stride) * stride;
      i <= to + stride && i < volts.length;
      i += stride
    )
      most = Math.max(most, Math.abs(volts[i]! - sound[i]!));
    // A place of the track lies between what a passage came from and went to, however long the hand was on its way.
    const ends = [from, to].map((at) => travel[Math.min(travel.length - 1, Math.round(at))]!);
    return {
      kinds,
      start: from * step,
      end: to * step,
      travel: (ends[0]! + ends[1]!) / 2,
      ratio: most / recorder.visible,
      snap: snap[from] === 1 || snap[Math.min(snap.length - 1, to)] === 1,
    };
  });
  return {
    fault,
    expected: bench.expected,
    told: recorder.told,
    sweep: recorded(recorder, volts, stride, random),
    events,
    visible: recorder.visible / bench.span,
  };
}
