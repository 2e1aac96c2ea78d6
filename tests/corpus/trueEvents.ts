import type { Finding, Seconds, Travel, Volts } from '@truesweep/core';
import { firstAtOrAfter } from './firstAtOrAfter.js';
import type { Passage } from './simulator/passages.js';
import type { CorpusPlan, Fault } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';

export type Kind = Finding['kind'];
export type FaultCause = 'track' | 'connection' | 'interference';

/** An event that the simulation put into the recording. */
export interface TrueEvent {
  /** What it looks like by domain.md's table; several where the table leaves it open, the likeliest first. */
  readonly kinds: readonly Kind[];
  readonly fault: number;
  readonly cause: FaultCause;
  readonly start: Seconds;
  readonly end: Seconds;
  /** Middle of the travel gone over while it was seen, and its ends. */
  readonly travel: Travel;
  readonly from: Travel;
  readonly to: Travel;
  readonly direction: 'opening' | 'closing' | 'rest';
  readonly snap: boolean;
  /** Counts for recall: not during a snap closing, and no jump that was undone before anyone could tell it from the hand. */
  readonly counted: boolean;
  /** Largest noise-free recorded difference from the faultless recording, V, with its sign. */
  readonly depth: Volts;
  /** Its size over the visible limit. */
  readonly ratio: number;
}

/** Less than this share of the visible limit is no event. */
const nothing = 0.02;

/** What each passage of a fault left in the recording. */
export function trueEvents(
  plan: CorpusPlan,
  simulated: Simulated,
  visible: Volts,
): readonly TrueEvent[] {
  return simulated.passages
    .flatMap((passage) => eventOf(plan, simulated, passage, visible) ?? [])
    .sort((a, b) => a.start - b.start);
}

function eventOf(
  plan: CorpusPlan,
  simulated: Simulated,
  passage: Passage,
  visible: Volts,
): TrueEvent | undefined {
  const { recording, motion } = simulated;
  const { instant, noiseFree, faultless } = recording;
  const fault = plan.faults[passage.fault]!;
  const persists = fault.kind === 'cracked' || fault.kind === 'slipped';
  const tail = plan.recorder.aperture + motion.step;
  // A sample is taken from the simulation's nearest step, which may be the passage's first.
  let first = firstAtOrAfter(instant, passage.start - motion.step / 2);
  let last = firstAtOrAfter(instant, passage.end + tail) - 1;
  if (persists) [first, last] = [Math.max(0, first - 1), Math.min(instant.length - 1, last + 1)];
  const offAt = (i: number): Volts => noiseFree[i]! - faultless[i]!;
  // A jump's depth is from the level before it, which another crack may have shifted already.
  const level = persists ? offAt(first) : 0;
  let depth = 0;
  for (let i = first; i <= last; i++) {
    const off = offAt(i) - level;
    if (Math.abs(off) > Math.abs(depth)) depth = off;
  }
  const ratio = Math.abs(depth) / visible;
  if (!(ratio > nothing)) return undefined;
  const whole = persists || fault.kind === 'dead-spot';
  const seen = whole
    ? passage
    : seenPart(simulated, first, last, Math.min(visible / 2, Math.abs(depth) / 2));
  const [from, to] = whole
    ? [passage.from, passage.to]
    : travelled(simulated, seen.start, seen.end);
  const moved = movementAt(simulated, seen.start, seen.end);
  return {
    kinds: kindsOf(fault, simulated, first, last, visible),
    fault: passage.fault,
    cause: causeOf(fault),
    start: seen.start,
    end: seen.end,
    travel: (from + to) / 2,
    from,
    to,
    ...moved,
    counted: !moved.snap && (!whole || goesThrough(fault, simulated, passage)),
    depth,
    ratio,
  };
}

/** From the first to the last sample that is off by more than a threshold. */
function seenPart(
  { recording }: Simulated,
  first: number,
  last: number,
  threshold: Volts,
): { readonly start: Seconds; readonly end: Seconds } {
  const { instant, noiseFree, faultless } = recording;
  const off = (i: number): boolean => Math.abs(noiseFree[i]! - faultless[i]!) >= threshold;
  let [from, to] = [first, last];
  while (from < last && !off(from)) from++;
  while (to > from && !off(to)) to--;
  return { start: instant[from]!, end: instant[to]! };
}

export function causeOf(fault: Fault): FaultCause {
  if (fault.kind === 'loose-connection') return 'connection';
  return fault.kind === 'interference' ? 'interference' : 'track';
}

function kindsOf(
  fault: Fault,
  simulated: Simulated,
  first: number,
  last: number,
  visible: Volts,
): readonly Kind[] {
  switch (fault.kind) {
    case 'cracked':
    case 'slipped':
      return ['step'];
    case 'dead-spot':
      return ['dead-spot'];
    case 'rough':
      return visiblePeaks(simulated, first, last, visible) < 3
        ? ['rough', 'spike', 'dropout']
        : ['rough'];
    case 'interference':
      return towardRest(simulated, first, last, visible / 2) === 'only'
        ? ['spike', 'dropout']
        : ['spike'];
    default: {
      const toward = towardRest(simulated, first, last, visible / 2);
      if (toward === 'only') return ['dropout'];
      return toward === 'never' ? ['spike'] : ['dropout', 'spike'];
    }
  }
}

/** Whether what is off by a threshold lies on the side of the lifted level, short of it or at it. */
function towardRest(
  { recording, liftedLevel }: Simulated,
  first: number,
  last: number,
  threshold: Volts,
): 'only' | 'partly' | 'never' {
  const { noiseFree, faultless } = recording;
  let [toward, away] = [0, 0];
  for (let i = first; i <= last; i++) {
    const off = noiseFree[i]! - faultless[i]!;
    if (Math.abs(off) < threshold) continue;
    const way = liftedLevel - faultless[i]!;
    if (off * way > 0 && Math.abs(off) <= Math.abs(way) + threshold) toward++;
    else away++;
  }
  if (away === 0) return 'only';
  return toward === 0 ? 'never' : 'partly';
}

/** How many separate excursions beyond the visible limit a stretch of samples holds. */
function visiblePeaks(
  { recording }: Simulated,
  first: number,
  last: number,
  visible: Volts,
): number {
  const { noiseFree, faultless } = recording;
  let peaks = 0;
  let above = 0;
  for (let i = first; i <= last; i++) {
    const off = noiseFree[i]! - faultless[i]!;
    const now = Math.abs(off) >= visible ? Math.sign(off) : 0;
    if (now !== 0 && now !== above) peaks++;
    above = now;
  }
  return peaks;
}

function travelled({ motion }: Simulated, start: Seconds, end: Seconds): readonly [Travel, Travel] {
  const { travel, step } = motion;
  let [from, to] = [1, 0];
  const last = Math.min(travel.length - 1, Math.ceil(end / step));
  for (let i = Math.max(0, Math.floor(start / step)); i <= last; i++) {
    from = Math.min(from, travel[i]!);
    to = Math.max(to, travel[i]!);
  }
  return [from, to];
}

function movementAt(
  { motion }: Simulated,
  start: Seconds,
  end: Seconds,
): Pick<TrueEvent, 'direction' | 'snap'> {
  const over = motion.stages.filter((stage) => stage.start <= end && stage.end >= start);
  const middle = over.find((stage) => stage.end >= (start + end) / 2) ?? over[0];
  const snap = over.some(({ kind }) => kind === 'snap');
  if (!middle) return { direction: 'rest', snap };
  return { direction: middle.kind === 'snap' ? 'closing' : middle.kind, snap };
}

/** A crossing in under this time, s, is one; longer ones dwell at the place, to and fro. */
const longestCrossing = 0.3;

/** Whether the throttle left a crack or a dead spot on the other side than it came from, or the rotor slipped. */
function goesThrough(
  fault: Fault,
  { motion }: Simulated,
  { start, end, from, to }: Passage,
): boolean {
  if (fault.kind === 'slipped') return true;
  const { travel, step } = motion;
  const before = travel[Math.max(0, Math.floor(start / step) - 1)]!;
  const after = travel[Math.min(travel.length - 1, Math.ceil(end / step) + 1)]!;
  const middle = (from + to) / 2;
  const through = before > middle !== after > middle;
  return through && (fault.kind === 'dead-spot' || end - start < longestCrossing);
}
