import type { PinResult, TerminalPair, TrackPins, Undecided } from './pinFinding.js';
import { changeOf, type PinTable, pairsOf, stops } from './pinTable.js';
import { positionOf } from './trackHypothesis.js';

const unlike: PinResult = { kind: 'not-a-potentiometer', reason: 'unlike-a-track' };

const undecidable = (reason: 'no-movement' | 'several-fit'): PinResult => ({
  kind: 'not-enough-readings',
  reason,
  missing: [],
  wiperMayBe: [],
});

/**
 * Two tracks in one housing that have terminals in common: both ends (four terminals) or one (five). All readings are
 * known and finite.
 */
export function sharedTracks(
  table: PinTable,
  group: readonly string[],
  threeTerminals: (group: readonly string[]) => PinResult,
): PinResult {
  if (pairsOf(group).every((pair) => changeOf(table, pair) === 'none')) {
    return undecidable('no-movement');
  }
  if (group.length === 4) return bothEndsShared(table, group);
  if (group.length === 5) return oneEndShared(table, group, threeTerminals);
  return unlike;
}

/** The ends are the one pair that doesn't follow the throttle. */
function bothEndsShared(table: PinTable, group: readonly string[]): PinResult {
  const still = pairsOf(group).filter((pair) => changeOf(table, pair) === 'none');
  const [ends] = still;
  if (!ends) return unlike;
  if (still.length > 1) return undecidable('several-fit');
  const wipers = group.filter((name) => !ends.includes(name));
  const tracks = wipers.map((wiper) => trackOnEnds(table, wiper, ends));
  const moved = tracks.every(
    ({ closedPosition, openPosition }) =>
      closedPosition.high < openPosition.low || openPosition.high < closedPosition.low,
  );
  if (!moved) return undecidable('no-movement');
  return twoTracks(tracks as [TrackPins, TrackPins], ends, ['single-tracks']);
}

function trackOnEnds(table: PinTable, wiper: string, ends: TerminalPair): TrackPins {
  const ranges = stops.map((at) => table.range(...ends, at)!);
  const [closed, open] = stops.map((at) => table.ohms(...ends, at)!) as [number, number];
  const track = {
    value: (closed + open) / 2,
    low: Math.max(...ranges.map(({ low }) => low)),
    high: Math.min(...ranges.map(({ high }) => high)),
  };
  const at = (from: TerminalPair) => ({
    closedPosition: positionOf(table, wiper, from, track, 'closed'),
    openPosition: positionOf(table, wiper, from, track, 'open'),
  });
  const onward = at(ends);
  const turned = onward.closedPosition.value > onward.openPosition.value;
  const from: TerminalPair = turned ? [ends[1], ends[0]] : ends;
  return { wiper, ends: from, closedEnd: from[0], track, ...(turned ? at(from) : onward) };
}

/** Through a terminal that both tracks share, the resistances from one track to the other add up. */
function oneEndShared(
  table: PinTable,
  group: readonly string[],
  threeTerminals: (group: readonly string[]) => PinResult,
): PinResult {
  const splits = group.flatMap((shared) => {
    const [first, ...others] = group.filter((name) => name !== shared) as [string, ...string[]];
    return others
      .map((partner) => {
        const one: TerminalPair = [first, partner];
        const other = others.filter((name) => name !== partner) as [string, string];
        return { shared, one, other };
      })
      .filter(({ one, other }) => addsUp(table, shared, one, other));
  });
  const [split] = splits;
  if (!split) return unlike;
  if (splits.length > 1) return undecidable('several-fit');
  const { shared, one, other } = split;
  const first = threeTerminals([shared, ...one]);
  const second = threeTerminals([shared, ...other]);
  for (const part of [first, second]) if (part.kind !== 'potentiometer') return part;
  if (first.kind !== 'potentiometer' || second.kind !== 'potentiometer') return unlike;
  const tracks = [first.tracks[0], second.tracks[0]] as const;
  return tracks.some(({ wiper }) => wiper === shared)
    ? unlike
    : twoTracks(tracks, [shared], first.undecided.concat(second.undecided));
}

function addsUp(table: PinTable, shared: string, one: TerminalPair, other: TerminalPair): boolean {
  return stops.every((at) =>
    one.every((a) =>
      other.every((b) => {
        const across = table.range(a, b, at)!;
        const near = table.range(a, shared, at)!;
        const far = table.range(shared, b, at)!;
        return across.low <= near.high + far.high && across.high >= near.low + far.low;
      }),
    ),
  );
}

function twoTracks(
  tracks: readonly [TrackPins, TrackPins],
  shared: readonly string[],
  open: readonly Undecided[],
): PinResult {
  const undecided = [...new Set<Undecided>(['fed-end', ...open])];
  return { kind: 'two-tracks', tracks, shared, switches: [], apart: [], undecided };
}
