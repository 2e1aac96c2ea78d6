import { formatQuantity, type PinFinding, type TrackPins } from '@truesweep/core';
import { pinSentences, undecidedSentences } from './pinSentences.js';
import { whole } from './whole.js';

/**
 * What ohmmeter readings say of a sensor's terminals, in sentences.
 *
 * @example
 * import { findPins } from '@truesweep/core';
 * const reading = (a, b, at, ohms) => ({ between: [a, b], at, ohms });
 * const readings = [
 *   reading('A', 'B', 'closed', 5000), reading('A', 'C', 'closed', 1300), reading('B', 'C', 'closed', 5300),
 *   reading('A', 'B', 'open', 5000), reading('A', 'C', 'open', 5300), reading('B', 'C', 'open', 1300),
 * ];
 * const found = findPins(['A', 'B', 'C'], readings, { fraction: 0.01, ohms: 1 });
 * pinFindingSentences(found)[1].startsWith('Wiper: C.') // => true
 */
export function pinFindingSentences(found: PinFinding): readonly string[] {
  return whole(found, 'found', () => saidOf(found));
}

function saidOf(found: PinFinding): readonly string[] {
  switch (found.kind) {
    case 'potentiometer':
    case 'two-tracks':
      return [
        pinSentences[found.kind],
        ...found.tracks.map(trackSentence),
        ...found.switches.map(({ terminals, madeAt }) => pinSentences.contact(terminals, madeAt)),
        ...(found.apart.length > 0 ? [pinSentences.apart(found.apart)] : []),
        ...found.undecided.map((one) => undecidedSentences[one]),
      ];
    case 'broken-track':
      return [pinSentences['broken-track']];
    case 'lifted-wiper':
      return [pinSentences['lifted-wiper'](found.wiper, found.ends, found.at)];
    case 'rheostat':
      return [pinSentences.rheostat(found.terminals)];
    case 'shorted':
      return [pinSentences.shorted(found.joined)];
    case 'idle-switch':
      return [
        pinSentences['idle-switch'],
        ...found.switches.map(({ terminals, madeAt }) => pinSentences.contact(terminals, madeAt)),
      ];
    case 'not-a-potentiometer':
      return [pinSentences['not-a-potentiometer'][found.reason]];
    case 'not-enough-readings':
      return [
        pinSentences['not-enough-readings'][found.reason],
        ...found.missing.map(({ between, at }) => pinSentences.wanted(between, at)),
      ];
    case 'contradictory':
      return [pinSentences.contradictory(found.terminals, found.at)];
  }
}

function trackSentence({ wiper, ends, closedEnd, track, series }: TrackPins): string {
  return pinSentences.track({
    wiper,
    ends,
    closedEnd,
    track: formatQuantity(track.value, 'Ω', { trim: true }),
    ...(series && series.low > 0 && { series: formatQuantity(series.value, 'Ω', { trim: true }) }),
  });
}
