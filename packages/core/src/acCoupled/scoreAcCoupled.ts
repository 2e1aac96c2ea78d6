import type { PreparedSweep, Recorder } from '../capture/captureQuality.js';
import type { Sweep } from '../capture/sweep.js';
import type { Criteria } from '../criteria.js';
import type { Expectation } from '../expectation/expectation.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import { nothingSeen } from '../score/coverage.js';
import { findCauses } from '../score/findCauses.js';
import { judgeCapture } from '../score/judgeCapture.js';
import { restsOn } from '../score/restsOn.js';
import type { Check, Score } from '../score/score.js';
import { abruptDepartures } from './abruptDepartures.js';

/** Of an abrupt departure alone each cause is as likely as the others. */
const anyCause = { track: 1 / 3, connection: 1 / 3, interference: 1 / 3 };

/**
 * Judges a recording whose recorder is coupled through a capacitor: the level sags back toward zero, so that neither travel nor rest levels
 * nor end readings can be told. Abrupt departures fail the sweep with the cause left open; without them it stays inconclusive.
 */
export function scoreAcCoupled(
  sweep: Sweep,
  prepared: PreparedSweep,
  expected: Expectation,
  recorder: Recorder,
  criteria: Criteria,
): Score {
  const { quality } = prepared;
  const abrupt = abruptDepartures(sweep, expected, quality.visible);
  const capture = judgeCapture(prepared, expected, recorder, criteria);
  const checks: readonly Check[] = [
    ...capture.filter(({ check }) => check !== 'clipping'),
    { check: 'coupling', outcome: 'cannot-tell', unit: '1', limitFrom: 'recorder' },
    {
      check: 'departures',
      outcome: abrupt.length > 0 ? 'fails' : 'cannot-tell',
      unit: 'count',
      measured: abrupt.length,
      highLimit: 0,
      margin: 0 - abrupt.length,
      limitFrom: 'criteria',
    },
  ];
  return {
    verdict: decideVerdict(checks),
    causes: findCauses(checks, abrupt.length > 0 ? anyCause : undefined),
    advice: [...(abrupt.length > 0 ? (['prove-connection'] as const) : []), 'couple-directly'],
    checks,
    findings: [],
    abrupt,
    spots: [],
    strokes: [],
    rests: [],
    snaps: [],
    quality,
    couldShow: { blind: [] },
    restsOn: restsOn(nothingSeen(), 0),
    coverage: nothingSeen(),
    closedReadings: {},
    testsNotDone: [],
    supplyAssumed: true,
    uncertaintyAssumed: false,
  };
}
