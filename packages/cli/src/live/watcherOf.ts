import type { Seconds, Stretch } from '@truesweep/core';
import { findingLine, hintSentence } from '@truesweep/wording';
import { layOut } from '../layOut.js';
import type { Output } from '../terminal.js';
import { paragraph } from '../textPart.js';
import { askedFor, headLine, liveLines } from './liveLines.js';
import type { LiveState } from './liveState.js';
import type { Watcher } from './watchLive.js';

/** Keys that mark a test, or end. */
const tests: Readonly<Record<string, Stretch['kind']>> = {
  t: 'harness-flexed',
  h: 'housing-tapped',
  w: 'warmed',
};

/** Somebody who watches: on a terminal a picture that is drawn again and again, elsewhere a line for whatever is new. */
export function watcherOf(output: Output): Watcher & { readonly end: () => void } {
  let [end, mark] = [() => {}, (_: Stretch['kind']) => {}];
  let isStopped = false;
  const onKey = (key: string): void => {
    const test = tests[key];
    if (test) mark(test);
    else if (key === 'q' || key === 'stop') {
      end();
      // What does not end by itself ends the hard way: what came is on the disk.
      if (isStopped) process.kill(process.pid, 'SIGINT');
      isStopped = true;
    }
  };
  const screen = output.screen?.(onKey);
  const leave = output.onInterrupt?.(() => end());
  const told = tellOnce(output);
  return {
    show: (state) =>
      screen ? screen.draw(liveLines(state, output, screen.rows(), screen.hasKeys)) : told(state),
    control(onEnd, onMark) {
      [end, mark] = [onEnd, onMark];
    },
    end() {
      screen?.end();
      leave?.();
    },
  };
}

/** Judged again, a finding may begin so much later: s. */
const sameFinding: Seconds = 0.02;

/** Tells by lines of the error output what has changed. */
function tellOnce(output: Output): (state: LiveState) => void {
  let before: LiveState | undefined;
  let latest = -Infinity;
  let asked = '';
  return (state) => {
    const lines: string[] = [];
    const { rate, isLost, findings, hints, soFar } = state;
    const isOther =
      rate?.baud !== before?.rate?.baud ||
      rate?.isTried !== before?.rate?.isTried ||
      isLost !== (before?.isLost ?? false);
    if (isOther) lines.push(headLine(state));
    for (const one of findings) if (one.start > latest + sameFinding) lines.push(findingLine(one));
    latest = Math.max(latest, ...findings.map(({ start }) => start));
    const known = before?.hints ?? [];
    for (const hint of hints) {
      if (!known.some((one) => one.hint === hint.hint)) lines.push(hintSentence(hint));
    }
    const now = soFar ? askedFor(soFar.missing, false) : asked;
    if (now !== asked) lines.push(now);
    asked = now;
    before = state;
    if (lines.length > 0)
      output.printError(
        layOut(
          lines.map((line) => paragraph(line)),
          output,
        ),
      );
  };
}
