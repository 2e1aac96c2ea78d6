import type {
  IdleSwitch,
  PinResult,
  Stop,
  TerminalPair,
  TrackPins,
  Undecided,
} from './pinFinding.js';
import { changeOf, missingReadings, type PinTable, pairsOf, stops } from './pinTable.js';
import { sharedTracks } from './sharedTracks.js';
import { trackIfWiper } from './trackHypothesis.js';

/** Readings below this count as joined, Ω. */
const joined = 10;

const broken = Number.POSITIVE_INFINITY;

/** What a group of terminals is, from the readings among them alone. */
export function arrangementOf(table: PinTable, group: readonly string[]): PinResult {
  if (group.length === 2) return twoTerminals(table, [group[0]!, group[1]!]);
  if (group.length === 3 && !anyBroken(table, group)) return threeTerminals(table, group);
  const missing = missingReadings(table, group);
  if (missing.length > 0) {
    return { kind: 'not-enough-readings', reason: 'missing', missing, wiperMayBe: [] };
  }
  const impossible = contradiction(table, group);
  if (impossible) return impossible;
  const withSwitch = besideSwitch(table, group);
  if (withSwitch) return withSwitch;
  if (group.length === 3) return threeWithBreak(table, group);
  const parts = connectedParts(table, group);
  if (parts.length > 1) return separateParts(table, parts);
  return sharedTracks(table, group, (three) => threeTerminals(table, three));
}

/** A found track as a result of its own. */
function oneTrack(track: TrackPins): PinResult {
  const undecided: Undecided[] = ['fed-end'];
  if (track.closedEnd === undefined) undecided.push('closed-end');
  return { kind: 'potentiometer', tracks: [track], shared: [], switches: [], apart: [], undecided };
}

function twoTerminals(table: PinTable, pair: TerminalPair): PinResult {
  const missing = missingReadings(table, pair);
  if (missing.length > 0) {
    return { kind: 'not-enough-readings', reason: 'missing', missing, wiperMayBe: [] };
  }
  const [closed, open] = stops.map((at) => table.ohms(...pair, at)!) as [number, number];
  if (closed === broken && open === broken) {
    return { kind: 'not-a-potentiometer', reason: 'no-connection' };
  }
  if (closed < joined && open < joined) return { kind: 'shorted', joined: [pair], apart: [] };
  if (closed === broken || open === broken) {
    if (Math.min(closed, open) >= joined) return { kind: 'broken-track' };
    const madeAt = open === broken ? 'closed' : 'open';
    return { kind: 'idle-switch', switches: [{ terminals: pair, madeAt }], apart: [] };
  }
  if (changeOf(table, pair) === 'none') return { kind: 'not-a-potentiometer', reason: 'constant' };
  return { kind: 'rheostat', terminals: pair, closed, open, apart: [] };
}

function threeTerminals(table: PinTable, group: readonly string[]): PinResult {
  const fitting = group.flatMap((wiper) => {
    const [a, b] = group.filter((name) => name !== wiper);
    return trackIfWiper(table, wiper, [a!, b!]) ?? [];
  });
  if (fitting.length === 1) return oneTrack(fitting[0]!);
  const shorts = pairsOf(group).filter((pair) =>
    stops.every((at) => (table.ohms(...pair, at) ?? broken) < joined),
  );
  if (shorts.length > 0) return { kind: 'shorted', joined: shorts, apart: [] };
  if (fitting.length === 0) {
    return contradiction(table, group) ?? { kind: 'not-a-potentiometer', reason: 'unlike-a-track' };
  }
  const missing = missingReadings(table, group);
  const still = pairsOf(group).every((pair) => changeOf(table, pair) === 'none');
  const reason = missing.length > 0 ? 'missing' : still ? 'no-movement' : 'several-fit';
  const wiperMayBe = fitting.map(({ wiper }) => wiper);
  return { kind: 'not-enough-readings', reason, missing, wiperMayBe };
}

/** Three terminals of which some have no path at some stop; all readings known and free of contradiction. */
function threeWithBreak(table: PinTable, group: readonly string[]): PinResult {
  const [closed, open] = stops.map((at) =>
    pairsOf(group).filter((pair) => table.ohms(...pair, at) !== broken),
  ) as [TerminalPair[], TerminalPair[]];
  if (closed.length + open.length === 0) {
    return { kind: 'not-a-potentiometer', reason: 'no-connection' };
  }
  const [fewer, more] = closed.length <= open.length ? [closed, open] : [open, closed];
  const [pair] = fewer;
  if (!pair) return { kind: 'broken-track' };
  const other = group.find((name) => !pair.includes(name))!;
  const same = more.some((kept) => kept.join() === pair.join());
  if (!same) return { kind: 'broken-track', wiper: pair.find((name) => more[0]!.includes(name))! };
  const alone = twoTerminals(table, pair);
  if (alone.kind === 'not-a-potentiometer') {
    const at = stops.filter((stop) => table.ohms(pair[0], other, stop) === broken);
    return { kind: 'lifted-wiper', wiper: other, ends: pair, at };
  }
  return more.length === 1 && 'apart' in alone
    ? { ...alone, apart: [other] }
    : { kind: 'broken-track' };
}

function anyBroken(table: PinTable, group: readonly string[]): boolean {
  return pairsOf(group).some((pair) => stops.some((at) => table.ohms(...pair, at) === broken));
}

/** Three terminals of which one resistance is more than both others together. */
function contradiction(
  table: PinTable,
  group: readonly string[],
): Extract<PinResult, { kind: 'contradictory' }> | undefined {
  for (const at of stops) {
    for (const [a, b] of pairsOf(group)) {
      const direct = table.range(a, b, at);
      for (const by of group) {
        const first = table.range(a, by, at);
        const second = table.range(by, b, at);
        if (direct && first && second && direct.low > first.high + second.high) {
          return { kind: 'contradictory', terminals: [a, by, b], at };
        }
      }
    }
  }
  return undefined;
}

/** What is left of a group without a terminal that is joined to another at one stop and to nothing at the other. */
function besideSwitch(table: PinTable, group: readonly string[]): PinResult | undefined {
  for (const terminal of group) {
    const contact = contactOf(table, terminal, group);
    if (!contact) continue;
    const rest = arrangementOf(
      table,
      group.filter((name) => name !== terminal),
    );
    if ('switches' in rest) {
      const apart = rest.apart.filter((name) => !contact.terminals.includes(name));
      return { ...rest, switches: [...rest.switches, contact], apart };
    }
    if (rest.kind === 'not-a-potentiometer' && rest.reason === 'no-connection') {
      const apart = group.filter((name) => !contact.terminals.includes(name));
      return { kind: 'idle-switch', switches: [contact], apart };
    }
  }
  return undefined;
}

function contactOf(
  table: PinTable,
  terminal: string,
  group: readonly string[],
): IdleSwitch | undefined {
  const others = group.filter((name) => name !== terminal);
  const pathless = (at: Stop) => others.every((name) => table.ohms(terminal, name, at) === broken);
  for (const madeAt of stops) {
    const partner = others.find((name) => table.ohms(terminal, name, madeAt)! < joined);
    const parted = madeAt === 'closed' ? 'open' : 'closed';
    if (partner && pathless(parted)) return { terminals: [terminal, partner], madeAt };
  }
  return undefined;
}

function connectedParts(table: PinTable, group: readonly string[]): readonly string[][] {
  const parts: string[][] = [];
  for (const terminal of group) {
    const touched = parts.filter((part) =>
      part.some((name) => stops.some((at) => table.ohms(name, terminal, at) !== broken)),
    );
    for (const part of touched) parts.splice(parts.indexOf(part), 1);
    parts.push([...touched.flat(), terminal]);
  }
  return parts;
}

/** Groups of terminals that have no path between them: two housings in one, or terminals that lead nowhere. */
function separateParts(table: PinTable, parts: readonly string[][]): PinResult {
  const found = parts
    .filter((part) => part.length > 1)
    .map((part) => ({ part, result: arrangementOf(table, part) }));
  const stuck = found.find(({ result }) => result.kind === 'not-enough-readings');
  if (stuck) return stuck.result;
  const switches = found.flatMap(({ result }) => ('switches' in result ? result.switches : []));
  const housed = found.flatMap(({ result }) => ('tracks' in result ? [result] : []));
  const used = [
    ...housed.flatMap(({ tracks }) => tracks.flatMap(({ wiper, ends }) => [wiper, ...ends])),
    ...switches.flatMap(({ terminals }) => terminals),
  ];
  const apart = parts.flat().filter((name) => !used.includes(name));
  const [first, second] = housed;
  if (first && second) {
    const tracks = [first.tracks[0], second.tracks[0]] as const;
    const undecided = [...new Set([...first.undecided, ...second.undecided])];
    return { kind: 'two-tracks', tracks, shared: [], switches, apart, undecided };
  }
  if (first) return { ...first, switches, apart };
  if (switches.length > 0) return { kind: 'idle-switch', switches, apart };
  const telling = found.find(({ result }) => result.kind !== 'not-a-potentiometer') ?? found[0];
  if (!telling) return { kind: 'not-a-potentiometer', reason: 'no-connection' };
  const { part, result } = telling;
  const others = parts.flat().filter((name) => !part.includes(name));
  return 'apart' in result ? { ...result, apart: others } : result;
}
