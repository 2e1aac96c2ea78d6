import type { Circuit, Connection, Mistake } from '@truesweep/core';
import { workingRules as rules, mistakeWorkingWords as words } from '@truesweep/wording/working';
import {
  difference,
  type Expression,
  type Operand,
  product,
  quotient,
  sum,
} from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Sheet } from '../workOut.js';
import { checkLegs, giveParts, unmarked } from './legs.js';

type Lead = keyof Connection;
type Terminal = Connection[Lead];

/** Which lead sits where, and what the signal lead's far end is on, for a mistake whose ways meet at the wiper. */
export interface StarConnection {
  readonly connection: Connection;
  /** The signal's far end is on the source's minus, past the load. */
  readonly signalGrounded?: true;
  /** The lead that the signal lead touches at the sensor. */
  readonly signalTouches?: 'supply' | 'ground';
}

const right: Connection = { supply: 'top', ground: 'bottom', signal: 'wiper' };

/** A mistake as ways that meet at the wiper; nothing for one whose ways don't. */
export function starOf(mistake: Mistake): StarConnection | undefined {
  switch (mistake.kind) {
    case 'none':
      return { connection: right };
    case 'exchanged-leads':
      return { connection: mistake.connection };
    case 'shorted-signal':
      return mistake.to === 'ground' ? { connection: right, signalGrounded: true } : undefined;
    case 'shorted-leads': {
      const other = mistake.leads.find((lead) => lead !== 'signal');
      const isSignals = mistake.leads.includes('signal') && other !== undefined;
      return isSignals ? { connection: right, signalTouches: other } : undefined;
    }
    default:
      return undefined;
  }
}

/** The symbols of the ways that meet at the wiper, or where the signal lead touches the supply lead. */
export interface Star {
  readonly source: string;
  /** All resistance in the way of the supply lead but the limiting resistor, which is `limiter` where there is one. */
  readonly supply: readonly string[];
  readonly limiter?: string;
  readonly ground: string;
  /** Through the load or past it; none where nothing hangs on the signal. */
  readonly signal?: string;
  readonly track: string;
  readonly load?: string;
  /** The parts of the source's current that go through the wiper and through the piece of track that carries most; nothing for all of it. */
  readonly carries: { readonly wiper?: Expression; readonly track?: Expression };
}

/** Refuses circuits that no star is worked out for; they were checked already. */
export function checkStar(circuit: Circuit): void {
  checkLegs(circuit, 'circuit');
  if (circuit.load.pullUp) refuseWorking('circuit.load.pullUp', 'is given');
}

/** Whether supply and ground leads that touch leave a second way back, through sensor and load beside the ground lead. */
export const hasWayBesideShort = ({ leads, load }: Circuit): boolean =>
  (leads?.ground ?? 0) > 0 && load.pullDown !== undefined;

/** Refuses a circuit in which leads that touch are more than what is in series with them. */
export function checkShort(circuit: Circuit): void {
  if (hasWayBesideShort(circuit)) refuseWorking('circuit.leads.ground', 'is given beside a load');
}

/** Works out the ways of the three leads up to the wiper's place, which is known on the sheet. */
export function findStar(
  sheet: Sheet,
  circuit: Circuit,
  { connection, signalGrounded, signalTouches }: StarConnection,
  x: string,
): Star {
  const parts = giveParts(sheet, circuit, unmarked);
  const inside: Readonly<Record<Terminal, readonly string[]>> = {
    top: parts.above.filter((symbol) => symbol.startsWith('R_top')),
    bottom: parts.below.filter((symbol) => symbol.startsWith('R_bot')),
    wiper: parts.signal.filter((symbol) => symbol !== 'R_sig'),
  };
  const ofTrack: Readonly<Record<Terminal, readonly ReturnType<typeof product>[]>> = {
    top: [product(difference(1, x), parts.track)],
    bottom: [product(x, parts.track)],
    wiper: [],
  };
  const leg = (terminal: Terminal): readonly string[] => {
    const pieces = [...ofTrack[terminal], ...inside[terminal]];
    if (pieces.length === inside[terminal].length && pieces.length < 2) return inside[terminal];
    const symbol = `R_${{ top: 'A', bottom: 'B', wiper: 'W' }[terminal]}`;
    sheet.find({
      symbol,
      meaning: words.leg[terminal],
      unit: 'Ω',
      formula: sum(...pieces),
      rule: rules.series,
    });
    return [symbol];
  };
  const outside = (lead: 'R_i' | 'R_s' | 'R_sup' | 'R_gnd' | 'R_sig') =>
    [...parts.above, ...parts.below, ...parts.signal].filter((symbol) => symbol === lead);
  const feeds = [...outside('R_i'), ...outside('R_sup')];
  const [limiter] = outside('R_s');
  const base = {
    source: parts.source,
    ...(limiter !== undefined && { limiter }),
    track: parts.track,
  };
  const load = parts.pullDown === undefined ? [] : [parts.pullDown];
  if (signalTouches) {
    const own = signalTouches === 'supply' ? leg('top') : leg('bottom');
    const [first = parts.track] = own;
    const [second] = leg('wiper');
    // Without a resistance of its own the wiper takes all of it.
    const both = second === undefined ? undefined : sum(first, second);
    const side = both
      ? [way(sheet, 'R_j', words.joined(signalTouches), [quotient(product(first, second!), both)])]
      : [];
    const wiper = both && quotient(first, both);
    if (signalTouches === 'ground') {
      const back = outside('R_gnd');
      const isPast = load.length > 0 && back.length > 0;
      const past = isPast ? sum(...outside('R_sig'), ...load) : undefined;
      const returned = past ? [quotient(product(back[0]!, past), sum(back[0]!, past))] : back;
      const ground = way(sheet, 'R_g', words.way('ground', 'bottom'), [...side, ...returned]);
      return {
        ...base,
        supply: [...feeds, ...leg('top')],
        ground,
        carries: { ...(wiper && { wiper }) },
      };
    }
    const ground = way(sheet, 'R_g', words.way('ground', 'bottom'), [
      ...side,
      ...leg('bottom'),
      ...outside('R_gnd'),
    ]);
    if (load.length === 0)
      return { ...base, supply: feeds, ground, carries: { ...(wiper && { wiper }) } };
    const signal = way(sheet, 'R_m', words.way('signal', 'wiper'), [...outside('R_sig'), ...load]);
    const track = quotient(signal, sum(ground, signal));
    const carries = { wiper: wiper ? product(track, wiper) : track, track };
    return { ...base, supply: feeds, ground, signal, load: load[0]!, carries };
  }
  const supply = [...feeds, ...leg(connection.supply)];
  const ground = way(sheet, 'R_g', words.way('ground', connection.ground), [
    ...leg(connection.ground),
    ...outside('R_gnd'),
  ]);
  if (load.length === 0 && !signalGrounded) return { ...base, supply, ground, carries: {} };
  const signal = way(sheet, 'R_m', words.way('signal', connection.signal), [
    ...leg(connection.signal),
    ...outside('R_sig'),
    ...(signalGrounded ? [] : load),
  ]);
  const both = sum(ground, signal);
  const shares = {
    supply: undefined,
    ground: quotient(signal, both),
    signal: quotient(ground, both),
  };
  const leadOn = (terminal: Terminal): Lead =>
    (['supply', 'ground', 'signal'] as const).find((lead) => connection[lead] === terminal)!;
  const wiper = shares[leadOn('wiper')];
  const track = leadOn('wiper') === 'supply' ? shares.ground : undefined;
  return {
    ...base,
    supply,
    ground,
    signal,
    ...(!signalGrounded && { load: load[0]! }),
    carries: { ...(wiper && { wiper }), ...(track && { track }) },
  };
}

/** Works out a way of several pieces; says its symbol, of a single piece that one's. */
function way(sheet: Sheet, symbol: string, meaning: string, pieces: readonly Operand[]): string {
  const [only] = pieces;
  if (pieces.length === 1 && typeof only === 'string') return only;
  if (pieces.length === 0) return sheet.give({ symbol, meaning, value: 0, unit: 'Ω' });
  sheet.find({
    symbol,
    meaning,
    unit: 'Ω',
    formula: sum(...pieces),
    rule: rules.series,
  });
  return symbol;
}

/** Works out what the source sees beyond the wiper's place; says its symbol. */
export function findBeyond(sheet: Sheet, { ground, signal }: Star): string {
  if (signal === undefined) return ground;
  if (sheet.value(ground) === 0 && sheet.value(signal) === 0)
    refuseWorking('position', 'puts two ways without any resistance side by side');
  sheet.find({
    symbol: 'R_p',
    meaning: words.beyond,
    unit: 'Ω',
    formula: quotient(product(ground, signal), sum(ground, signal)),
    rule: rules.parallel,
  });
  return 'R_p';
}
