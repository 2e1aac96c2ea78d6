import type { Cause, Verdict, Volts } from '@truesweep/core';
import type { CorpusPlan } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';
import { neverOpen, trueCapture } from './trueCapture.js';
import { trueCause } from './trueCause.js';
import { type TrueEvent, trueEvents } from './trueEvents.js';
import { eventOutcomes } from './trueOutcomes.js';
import { closedRestOutcomes, endOutcomes, worse } from './trueRests.js';
import { trueWindows } from './trueWindows.js';
import { visibleLimit } from './visibleLimit.js';

/** What is true of a simulated recording, from its plan and design.md's rules alone. */
export interface Truth {
  readonly sound: boolean;
  readonly visible: Volts;
  readonly events: readonly TrueEvent[];
  /** Whether the recording could show what it must; absent where that is a matter of opinion. */
  readonly adequate?: boolean;
  /** The verdicts that the rules allow; decided where it is one. */
  readonly verdicts: readonly Verdict[];
  /** What leaves the verdict open. */
  readonly open: readonly string[];
  /** The causes that count as right; absent where cause is not scored. */
  readonly causes?: readonly Cause[];
  /** Something is surely visible: a pass would be wrong. */
  readonly surelyVisible: boolean;
}

export type Outcome = 'conforms' | 'marginal' | 'fails';

const anything: readonly Outcome[] = ['conforms', 'marginal', 'fails'];

export function truthOf(plan: CorpusPlan, simulated: Simulated): Truth {
  const windows = trueWindows(plan.nominal, plan.tolerances);
  const span = Math.abs(windows.open.nominal - windows.closed.nominal);
  const visible = visibleLimit(plan.recorder, span, simulated.recording.time.length);
  const events = trueEvents(plan, simulated, visible);
  const capture = trueCapture(plan, simulated, visible / span, windows);
  const wiring = wiringOutcomes(plan, simulated);
  const atStops = !capture.reasons.includes(neverOpen);
  const parts: Record<string, readonly Outcome[]> = wiring
    ? { wiring }
    : {
        events: eventOutcomes(events, span),
        ends: capture.clippedUnknown
          ? anything
          : bothEnds(
              endOutcomes('closed', plan, simulated, windows.closed, span),
              atStops ? endOutcomes('open', plan, simulated, windows.open, span) : ['conforms'],
            ),
        'closed rest': closedRestOutcomes(plan, simulated, span),
      };
  // A window narrower than four expanded uncertainties asks for a better instrument.
  const narrow = [windows.closed, windows.open].some(
    ({ low, high }) => high - low < 8 * (plan.told.uncertainty ?? 0),
  );
  const verdicts = allowedVerdicts(parts, capture.adequate, narrow);
  const open = [
    ...Object.entries(parts).flatMap(([name, outcomes]) => (outcomes.length > 1 ? [name] : [])),
    ...(capture.adequate.length > 1 ? ['capture'] : []),
    ...(narrow ? ['window too narrow'] : []),
  ];
  return {
    sound: plan.className.startsWith('sound'),
    visible,
    events,
    ...(capture.adequate.length === 1 && !narrow && { adequate: capture.adequate[0]! }),
    verdicts,
    open,
    ...trueCause(plan, simulated, events, parts),
    surelyVisible: Object.values(parts).some((outcomes) => !outcomes.includes('conforms')),
  };
}

/** A dead output or mixed-up terminals fail, unless the swapped sensor reads as a right one would. */
function wiringOutcomes(plan: CorpusPlan, simulated: Simulated): readonly Outcome[] | undefined {
  if (plan.className === 'no output') return ['fails'];
  if (plan.className !== 'wrong terminals') return undefined;
  const windows = trueWindows(plan.nominal, plan.tolerances);
  const span = Math.abs(windows.open.nominal - windows.closed.nominal);
  const { noiseFree } = simulated.recording;
  const [low, high] = noiseFree.reduce(
    ([least, most], value) => [Math.min(least, value), Math.max(most, value)] as const,
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY] as readonly [number, number],
  );
  const expected = [windows.closed, windows.open].sort((a, b) => a.nominal - b.nominal);
  const near = (value: number, window: { readonly low: number; readonly high: number }): boolean =>
    value > window.low - 0.15 * span && value < window.high + 0.15 * span;
  return near(low, expected[0]!) && near(high, expected[1]!) ? anything : ['fails'];
}

/** The worse outcome of both ends, for every choice. */
function bothEnds(closed: readonly Outcome[], open: readonly Outcome[]): readonly Outcome[] {
  return [...new Set(closed.flatMap((one) => open.map((other) => worse(one, other))))];
}

/**
 * All verdicts that some choice of one outcome from each part leads to. Where the recording is poor, what is seen in it may be
 * called inconclusive too, but for ends and closed readings that surely fail: those were read at rest.
 */
function allowedVerdicts(
  parts: Readonly<Record<string, readonly Outcome[]>>,
  adequate: readonly boolean[],
  narrow: boolean,
): readonly Verdict[] {
  const { events = [], ...others } = parts;
  const all = Object.values(parts);
  const atRest = Object.values(others).some((outcomes) => outcomes.every((one) => one === 'fails'));
  const mustFail = all.some((outcomes) => outcomes.every((one) => one === 'fails'));
  const may = (outcome: Outcome): boolean => all.some((outcomes) => outcomes.includes(outcome));
  const allMay = (...allowed: readonly Outcome[]): boolean =>
    all.every((outcomes) => outcomes.some((one) => allowed.includes(one)));
  const verdicts = new Set<Verdict>();
  if (may('fails')) verdicts.add('fail');
  if (!mustFail && may('marginal') && allMay('conforms', 'marginal')) verdicts.add('marginal');
  if (allMay('conforms')) for (const fine of adequate) verdicts.add(fine ? 'pass' : 'inconclusive');
  if (allMay('conforms') && narrow) verdicts.add('inconclusive');
  const seen = [...events, ...Object.values(others).flat()].some((one) => one !== 'conforms');
  if (!atRest && seen && adequate.includes(false)) verdicts.add('inconclusive');
  return [...verdicts];
}
