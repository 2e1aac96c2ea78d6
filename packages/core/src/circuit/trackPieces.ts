import type { Ohms, Position } from '../units.js';

/** A piece of the track between two places, in order from the bottom. */
export interface TrackPiece {
  readonly id: string;
  /** Node at the piece's upper and lower end. */
  readonly upper: string;
  readonly lower: string;
  readonly from: Position;
  readonly to: Position;
  readonly ohms: Ohms;
}

/**
 * Cuts the track at the wiper and at the ends of its shorted stretches. The pieces next to the wiper are
 * `trackBelow` and `trackAbove`, those farther out bear a number more.
 *
 * @param bottom Node at the track's bottom end; `top` that at its top end; the wiper's is `track`.
 */
export function trackPieces(
  track: Ohms,
  wiper: Position,
  broken: readonly Position[],
  shorted: readonly (readonly [Position, Position])[],
): { readonly pieces: readonly TrackPiece[]; readonly nodeAt: (cut: Position) => string } {
  const cuts = [...new Set(shorted.flat())].sort((a, b) => a - b);
  const nodeAt = (cut: Position): string => `trackCut${cuts.indexOf(cut) + 1}`;
  const places = [
    { at: 0, node: 'trackBottom' },
    ...cuts.filter((cut) => cut <= wiper).map((cut) => ({ at: cut, node: nodeAt(cut) })),
    { at: wiper, node: 'track' },
    ...cuts.filter((cut) => cut > wiper).map((cut) => ({ at: cut, node: nodeAt(cut) })),
    { at: 1, node: 'trackTop' },
  ];
  const below = places.findIndex(({ node }) => node === 'track');
  const pieces = places.slice(1).map(({ at: to, node: upper }, i): TrackPiece => {
    const { at: from, node: lower } = places[i]!;
    const farther = i < below ? below - 1 - i : i - below;
    const id = `${i < below ? 'trackBelow' : 'trackAbove'}${farther > 0 ? farther + 1 : ''}`;
    const cracked = broken.some(
      (place) => place >= from && (place < to || (place === 1 && i === places.length - 2)),
    );
    return {
      id,
      upper,
      lower,
      from,
      to,
      ohms: cracked ? Number.POSITIVE_INFINITY : pieceOhms(track, to - from),
    };
  });
  return { pieces, nodeAt };
}

/** A piece below 1 pΩ counts as none, so a piece of no length is 0 Ω even of a track that does not conduct. */
function pieceOhms(track: Ohms, length: number): Ohms {
  const ohms = length === 0 ? 0 : track * length;
  return ohms < 1e-12 ? 0 : ohms;
}
