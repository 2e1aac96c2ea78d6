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
  const contact = { at: wiper, node: 'track' };
  // A wiper at the track's top end comes from below: a stretch shorted up to there ends above it.
  const inner = wiper < 1 ? [...cuts, contact] : [contact, ...cuts];
  const places = [{ at: 0, node: 'trackBottom' }, ...inner, { at: 1, node: 'trackTop' }].sort(
    (one, other) => one.at - other.at,
  );
  const middle = places.indexOf(contact);
  const pieces = places.slice(1).map(({ at, node }, i): Element => {
    const lower = places[i]!;
    const cracked = broken.some(
      (place) => place >= lower.at && (place < at || node === 'trackTop'),
    );
    const number = i < middle ? middle - i : i - middle + 1;
    const id = `${i < middle ? 'trackBelow' : 'trackAbove'}${number > 1 ? number : ''}`;
    const ohms = cracked ? Infinity : pieceOhms(track, at - lower.at);
    return { id, from: node, to: lower.node, ohms };
  });
  return pieces.reverse();
}

/** A piece below 1 pΩ counts as none; no length of a track that does not conduct is ∞ · 0 Ω, not a number, and none too. */
function pieceOhms(track: Ohms, length: number): Ohms {
  return track * length >= 1e-12 ? track * length : 0;
}
