import type { Seconds, Travel } from '@truesweep/core';
import type { Hand, Move, Submovement } from '../simulator/plan.js';
import type { RandomStream } from '../simulator/randomStream.js';

export interface Manner {
  readonly returns: 'hand' | 'spring' | 'mixed';
  readonly pauses: boolean;
  /** Also strokes that turn back half-way. */
  readonly partial: 'none' | 'some' | 'only';
  readonly strokeSeconds: readonly [Seconds, Seconds];
  readonly restSeconds: readonly [Seconds, Seconds];
  /** Scatter of the place where returns come to rest. */
  readonly stick: Travel;
}

/** One technician's recording: rests at both ends and at least three returns to closed reached the same way. */
export function drawMoves(manner: Manner, random: RandomStream): readonly Move[] {
  const { returns, partial } = manner;
  const rest = (): Move => ({ kind: 'rest', seconds: random.between(...manner.restSeconds) });
  const closedAt = (): Travel => manner.stick * random.uniform();
  const stroke = (from: Travel, to: Travel): Move =>
    drawStroke(from, to, closedAt(), manner, random);
  const cycle = (top: Travel, spring: boolean): Move[] => [
    stroke(0, top),
    rest(),
    spring ? drawSnap(closedAt(), random) : stroke(top, 0),
    rest(),
  ];
  const ways = {
    hand: [false, false, false],
    spring: [false, true, true, true],
    mixed: [false, false, false, true, true, true],
  };
  const moves: Move[] = [rest()];
  for (const spring of ways[returns]) {
    if (partial === 'some' && random.chance(0.4))
      moves.push(...cycle(random.between(0.25, 0.85), false));
    const top = partial === 'only' ? random.between(0.25, 0.85) : 1;
    moves.push(...cycle(top, spring));
  }
  if (returns === 'hand' && random.chance(0.4))
    moves.push(...cycle(partial === 'only' ? 0.6 : 1, false));
  return moves;
}

/** Strokes of several minimum-jerk parts that overlap, or leave a pause between them. */
function drawStroke(
  from: Travel,
  to: Travel,
  closedAt: Travel,
  { strokeSeconds, pauses }: Manner,
  random: RandomStream,
): Move {
  const count = random.whole(1, 4);
  const raw = Array.from({ length: count }, () => 0.2 + random.uniform());
  const total = raw.reduce((sum, share) => sum + share, 0);
  const parts: Submovement[] = [];
  let start = 0;
  for (const share of raw) {
    const seconds = (share / total) ** 0.6 * random.between(0.8, 1.3);
    parts.push({ share: share / total, start, seconds });
    start += seconds * random.between(0.45, 0.9);
  }
  const natural = Math.max(...parts.map((part) => part.start + part.seconds));
  const scale = (random.between(...strokeSeconds) * Math.max(0.4, Math.abs(to - from))) / natural;
  const pauseAfter = pauses && count > 1 && random.chance(0.5) ? random.whole(0, count - 2) : count;
  const pause = random.between(0.3, 1.5);
  const timed = parts.map((part, i) => {
    const { share, seconds } = part;
    return {
      share,
      start: part.start * scale + (i > pauseAfter ? pause + 0.3 * scale : 0),
      seconds: seconds * scale,
    };
  });
  const seconds = Math.max(...timed.map((part) => part.start + part.seconds));
  return { kind: 'stroke', to, seconds, parts: timed, closedAt };
}

function drawSnap(closedAt: Travel, random: RandomStream): Move {
  const fall = random.between(0.02, 0.08);
  const restitution = random.between(0.05, 0.5);
  const decay = -Math.log(restitution);
  return {
    kind: 'snap',
    acceleration: 2 / fall ** 2,
    stiffening: random.between(0.1, 0.6),
    drag: random.between(0, 0.8) / fall,
    stopHertz: random.between(2000, 5000),
    stopDamping: decay / Math.hypot(Math.PI, decay),
    closedAt,
  };
}

/** Steady and unsteady hands; most press on the open stop firmly enough that it does not move. */
export function drawHand(random: RandomStream): Hand {
  const noise = random.logBetween(0.001, 0.008);
  const tremor = random.logBetween(0.0002, 0.002);
  const firmness = random.chance(0.8) ? random.between(4, 8) : random.between(2, 4);
  return {
    noise,
    hertz: random.between(1.5, 4),
    tremor,
    tremorHertz: random.between(8, 12),
    press: firmness * Math.hypot(noise, tremor),
  };
}
