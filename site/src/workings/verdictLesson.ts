import { defaultCriteria, scoreSweep } from '@truesweep/core';
import {
  explainCauses,
  explainFinding,
  explainLimits,
  explainPlace,
  explainVisible,
} from '@truesweep/explain';
import { checkLabels, scoreSentences, verdictLabels } from '@truesweep/wording';
import { lessonSentences } from '@truesweep/wording/working';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { verdictAt, verdictExpected } from '../lessons/verdict.js';
import { written } from './written.js';

/** The verdict on the six passes, and from what it follows: the first departure (or how small a one would show), its place, the causes, and the open reading. */
export function stepsOf(places: Places): LessonSteps {
  const score = scoreSweep(verdictAt(places).sweep, verdictExpected);
  const { verdict, sure, cause, places: again } = scoreSentences(score, {});
  const [finding] = score.findings;
  const [spot] = score.spots;
  const { explanations, quality } = score;
  const open = score.checks.find(({ check }) => check === 'open-end');
  const [closed = 0, ...others] = verdictExpected.curve.volts;
  const span = (others.at(-1) ?? closed) - closed;
  return {
    says: [
      lessonSentences.judged(verdictLabels[score.verdict], verdict),
      ...sure,
      ...cause,
      ...again,
    ],
    workings: written(
      ...(finding ? [() => explainFinding(finding, quality)] : []),
      ...(spot ? [() => explainPlace(spot, score.findings, defaultCriteria)] : []),
      ...(explanations ? [() => explainCauses(explanations)] : []),
      ...(finding ? [] : [() => explainVisible(quality, span, defaultCriteria)]),
      ...(open
        ? [
            () =>
              explainLimits(open, checkLabels['open-end'], {
                kind: 'end',
                span,
                part: defaultCriteria.endMarginal,
              }),
          ]
        : []),
    ),
  };
}
