import type { Ohms, Position } from '../units.js';
import type { Element } from './network.js';

/** A place on the track, from 0 at its bottom end to 1 at its top end, and its node. */
interface Place {
  readonly at: Position;
  readonly node: string;
}

/**
 * The track in pieces, from the top down, cut at the wiper and at the ends of its shorted stretches. The pieces
 * next to the wiper are `trackBelow` and `trackAbove`, those farther out bear a number more.
 *
 * @param cuts The ends of the shorted stretches.
 */
export function trackPieces(
  track: Ohms,
  wiper: Position,
  broken: readonly Position[],
  cuts: readonly Place[],
): readonly Element[] {
  // At the end of a shorted stretch the wiper stands inside it, as it does just before.
  const contact = { at: wiper, node: 'track' };
  // At the end of a shorted stretch the wiper stands inside it, as it does just before.
  const inOrder = wiper ? [...cuts, contact] : [contact, ...cuts];
  const places = [{ at: 1, node: 'trackTop' }, ...inOrder, { at: 0, node: 'trackBottom' }].sort(
    (one, other) => other.at - one.at,
  );
  const middle = places.indexOf(contact);
  return places.slice(1).map(({ at, node }, i): Element => {
    const upper = places[i]!;
    const cracked = broken.some(
      (place) => place >= at && (place < upper.at || upper.node === 'trackTop'),
    );
    const number = i < middle ? middle - i : i - middle + 1;
    const id = `track${i < middle ? 'Above' : 'Below'}${number > 1 ? number : ''}`;
    const ohms = cracked ? Infinity : pieceOhms(track, upper.at - at);
    return { id, from: upper.node, to: node, ohms };
  });
}

/** A piece below 1 pΩ counts as none, so a piece of no length is 0 Ω even of a track that does not conduct. */
function pieceOhms(track: Ohms, length: number): Ohms {
  return length === 0 || track * length < 1e-12 ? 0 : track * length;
}
