import { type Cause, expectation, type Verdict, type Volts } from '@truesweep/core';
import type { CorpusPlan } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';
import { trueCapture } from './trueCapture.js';
import { trueCause } from './trueCause.js';
import { type TrueEvent, trueEvents } from './trueEvents.js';
import { eventOutcomes } from './trueOutcomes.js';
import { closedRestOutcomes, endOutcomes } from './trueRests.js';
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
  /** Nothing visible to be found, of ends and closed rest either. */
  readonly nothingVisible: boolean;
  /** Something is surely visible: a pass would be wrong. */
  readonly surelyVisible: boolean;
}

export type Outcome = 'conforms' | 'marginal' | 'fails';

export function truthOf(plan: CorpusPlan, simulated: Simulated): Truth {
  const { windows } = expectation(plan.nominal, plan.tolerances);
  const span = Math.abs(windows.open.nominal - windows.closed.nominal);
  const visible = visibleLimit(plan.recorder, span, simulated.recording.time.length);
  const events = trueEvents(plan, simulated, visible);
  const capture = trueCapture(plan, simulated, visible / span);
  const wiring = wiringOutcomes(plan, simulated);
  const partialOnly = capture.reasons.includes('never at the open stop');
  const parts: Record<string, readonly Outcome[]> = wiring
    ? { wiring }
    : {
        events: eventOutcomes(events, span),
        'closed end': endOutcomes('closed', plan, simulated, windows.closed, span),
        'open end':
          partialOnly || capture.clipped
            ? ['conforms']
            : endOutcomes('open', plan, simulated, windows.open, span),
        'closed rest': capture.clipped ? ['conforms'] : closedRestOutcomes(plan, simulated, span),
      };
  const verdicts = allowedVerdicts(Object.values(parts), capture.adequate);
  const open = Object.entries(parts).flatMap(([name, outcomes]) =>
    outcomes.length > 1 ? [name] : [],
  );
  const worst = Object.values(parts).flat();
  return {
    sound: plan.className.startsWith('sound'),
    visible,
    events,
    ...(capture.adequate.length === 1 && { adequate: capture.adequate[0]! }),
    verdicts,
    open: capture.adequate.length > 1 ? [...open, 'capture'] : open,
    ...trueCause(plan, simulated, events, parts),
    nothingVisible: worst.every((outcome) => outcome === 'conforms'),
    surelyVisible: Object.values(parts).some((outcomes) => !outcomes.includes('conforms')),
  };
}

/** A dead output or mixed-up terminals fail, unless the swapped sensor reads as a right one would. */
function wiringOutcomes(plan: CorpusPlan, simulated: Simulated): readonly Outcome[] | undefined {
  if (plan.className === 'no output') return ['fails'];
  if (plan.className !== 'wrong terminals') return undefined;
  const { windows } = expectation(plan.nominal, plan.tolerances);
  const span = Math.abs(windows.open.nominal - windows.closed.nominal);
  const { noiseFree } = simulated.recording;
  const [low, high] = noiseFree.reduce(
    ([least, most], value) => [Math.min(least, value), Math.max(most, value)] as const,
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY] as readonly [number, number],
  );
  const expected = [windows.closed, windows.open].sort((a, b) => a.nominal - b.nominal);
  const near = (value: number, window: { readonly low: number; readonly high: number }): boolean =>
    value > window.low - 0.15 * span && value < window.high + 0.15 * span;
  return near(low, expected[0]!) && near(high, expected[1]!)
    ? ['conforms', 'marginal', 'fails']
    : ['fails'];
}

/** All verdicts that some choice of one outcome from each part leads to. */
function allowedVerdicts(
  parts: readonly (readonly Outcome[])[],
  adequate: readonly boolean[],
): readonly Verdict[] {
  const verdicts = new Set<Verdict>();
  const mustFail = parts.some((outcomes) => outcomes.every((outcome) => outcome === 'fails'));
  const may = (outcome: Outcome): boolean => parts.some((outcomes) => outcomes.includes(outcome));
  const allMay = (...allowed: readonly Outcome[]): boolean =>
    parts.every((outcomes) => outcomes.some((outcome) => allowed.includes(outcome)));
  const departs = parts.some((outcomes) => outcomes.some((outcome) => outcome !== 'conforms'));
  if (may('fails')) verdicts.add('fail');
  if (!mustFail && may('marginal') && allMay('conforms', 'marginal')) verdicts.add('marginal');
  if (allMay('conforms')) for (const fine of adequate) verdicts.add(fine ? 'pass' : 'inconclusive');
  if (departs && adequate.includes(false)) verdicts.add('inconclusive');
  return [...verdicts];
}
