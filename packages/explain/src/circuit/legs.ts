import type { Circuit } from '@truesweep/core';
import { workingRules as rules, circuitWorkingWords as words } from '@truesweep/wording/working';
import { difference, type Expression, negative, product, quotient, sum } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Sheet } from '../workOut.js';

/** What of a sheet tells one hook-up's symbols from another's. */
export interface Marks {
  /** The name of a symbol of this hook-up. */
  readonly of: (symbol: string) => string;
  /** What follows its meaning. */
  readonly meaning: (text: string) => string;
}

/** The names as they are: one hook-up only. */
export const unmarked: Marks = { of: (symbol) => symbol, meaning: (text) => text };

/** Symbols and meanings with a mark behind them. */
export function marked(mark: string, where: string): Marks {
  return {
    of: (symbol) => (symbol.includes('_') ? `${symbol},${mark}` : `${symbol}_${mark}`),
    meaning: (text) => `${text}, ${where}`,
  };
}

/** The symbols of a hook-up's legs, which meet at the wiper's place. */
export interface LegSymbols {
  /** The source's voltage. */
  readonly source: string;
  /** Resistance up to the source. */
  readonly up: string;
  readonly down: string;
  /** Both without the track, and the track: symbols of what there is. */
  readonly above: readonly string[];
  readonly below: readonly string[];
  readonly track: string;
  /** Between the wiper's place and the load; none where there is nothing. */
  readonly signal?: string;
  /** The load as one source behind one resistance; none without a load. */
  readonly load?: { readonly ohms: string; readonly volts?: string };
}

/** A part of a circuit that is there: its symbol and its value. */
type Part = readonly [symbol: keyof typeof words.given, value: number, unit: WorkingUnit];

/** Refuses what no working is written for; the circuit was checked already. */
export function checkLegs(circuit: Circuit, path: string): void {
  const { source, leads = {}, sensor, load } = circuit;
  if (circuit.connection) refuseWorking(`${path}.connection`, 'is given');
  if (circuit.faults?.length) refuseWorking(`${path}.faults`, 'are given');
  if (source.currentLimit !== undefined) refuseWorking(`${path}.source.currentLimit`, 'is given');
  if (load.common === 'sensor') refuseWorking(`${path}.load.common`, 'is at the sensor');
  if (load.pullUp && 'from' in load.pullUp && (load.pullUp.from === 'sensor' || source.ohms))
    refuseWorking(`${path}.load.pullUp.from`, 'is given');
  if (load.pullDown === 0) refuseWorking(`${path}.load.pullDown`, 'is 0 Ω');
  if (load.pullUp?.ohms === 0) refuseWorking(`${path}.load.pullUp.ohms`, 'is 0 Ω');
  const { track, contact = 0, terminalResistors = {} } = sensor;
  const ohms = [
    circuit.limiter,
    track,
    contact,
    ...Object.values(terminalResistors),
    ...Object.values(leads),
  ];
  if (ohms.includes(Infinity)) refuseWorking(path, 'has a part that does not conduct');
  if (!(track > 0)) refuseWorking(`${path}.sensor.track`, 'is 0 Ω');
}

/** The parts of a circuit: those above the track, the track, those below it, those of the signal. */
export function partsOf({ source, limiter, leads = {}, sensor }: Circuit) {
  const built = sensor.terminalResistors ?? {};
  const there = (parts: readonly Part[]) => parts.filter(([, value]) => value > 0);
  return {
    above: there([
      ['R_i', source.ohms ?? 0, 'Ω'],
      ['R_s', limiter, 'Ω'],
      ['R_sup', leads.supply ?? 0, 'Ω'],
      ['R_top,b', built.top ?? 0, 'Ω'],
      ['R_top', sensor.topResidual ?? 0, 'Ω'],
    ]),
    below: there([
      ['R_bot', sensor.bottomResidual ?? 0, 'Ω'],
      ['R_bot,b', built.bottom ?? 0, 'Ω'],
      ['R_gnd', leads.ground ?? 0, 'Ω'],
    ]),
    signal: there([
      ['R_c', sensor.contact ?? 0, 'Ω'],
      ['R_wip,b', built.wiper ?? 0, 'Ω'],
      ['R_sig', leads.signal ?? 0, 'Ω'],
    ]),
  };
}

/** What belongs to the sensor and is the same on each of its hook-ups. */
const ofSensor: readonly Part[0][] = [
  'R_t',
  'R_top',
  'R_bot',
  'R_top,b',
  'R_bot,b',
  'R_wip,b',
  'R_c',
];

/** Names a hook-up's parts on a sheet; the sensor's bear no mark, and are named once. */
export function giveParts(sheet: Sheet, circuit: Circuit, { of, meaning }: Marks) {
  const give = ([symbol, value, unit]: Part): string => {
    if (!ofSensor.includes(symbol))
      return sheet.give({ symbol: of(symbol), meaning: meaning(words.given[symbol]), value, unit });
    return sheet.has(symbol)
      ? symbol
      : sheet.give({ symbol, meaning: words.given[symbol], value, unit });
  };
  const { above, below, signal } = partsOf(circuit);
  const { pullDown = Infinity, pullUp } = circuit.load;
  const isPulledUp = pullUp !== undefined && pullUp.ohms < Infinity;
  return {
    source: give(['E', circuit.source.volts, 'V']),
    above: above.map(give),
    track: give(['R_t', circuit.sensor.track, 'Ω']),
    below: below.map(give),
    signal: signal.map(give),
    ...(pullDown < Infinity && { pullDown: give(['R_L', pullDown, 'Ω']) }),
    ...(isPulledUp && {
      pullUp: {
        ohms: give(['R_pu', pullUp.ohms, 'Ω']),
        volts: give(['U_pu', 'volts' in pullUp ? pullUp.volts : circuit.source.volts, 'V']),
      },
    }),
  };
}

/** Works out the legs of a hook-up with its wiper at a place that is known on the sheet. */
export function findLegs(
  sheet: Sheet,
  parts: ReturnType<typeof giveParts>,
  position: string,
  { of, meaning }: Marks,
): LegSymbols {
  const { source, above, below, track, signal, pullDown, pullUp } = parts;
  const up = of('R_u');
  const down = of('R_d');
  sheet.find({
    symbol: up,
    meaning: meaning(words.finds.R_u),
    unit: 'Ω',
    formula: sum(...above, product(difference(1, position), track)),
    rule: rules.series,
  });
  sheet.find({
    symbol: down,
    meaning: meaning(words.finds.R_d),
    unit: 'Ω',
    formula: sum(product(position, track), ...below),
    rule: rules.series,
  });
  const between = findSignal(sheet, signal, { of, meaning });
  const load = findLoad(sheet, pullDown, pullUp, { of, meaning });
  return {
    source,
    up,
    down,
    above,
    below,
    track,
    ...(between !== undefined && { signal: between }),
    ...(load && { load }),
  };
}

/** What lies between the wiper's place and the load. */
export function findSignal(
  sheet: Sheet,
  signal: readonly string[],
  { of, meaning }: Marks,
): string | undefined {
  if (signal.length < 2) return signal[0];
  const symbol = of('R_k');
  sheet.find({
    symbol,
    meaning: meaning(words.finds.R_k),
    unit: 'Ω',
    formula: sum(...signal),
    rule: rules.series,
  });
  return symbol;
}

/** The voltage that pulls a current through the load out of a place at this symbol's, taken the other way. */
export const pulledFrom = (place: string, load: NonNullable<LegSymbols['load']>): Expression =>
  load.volts === undefined ? negative(place) : difference(load.volts, place);

/** The load as one source behind one resistance. */
export function findLoad(
  sheet: Sheet,
  pullDown: string | undefined,
  pullUp: { readonly ohms: string; readonly volts: string } | undefined,
  { of, meaning }: Marks,
): LegSymbols['load'] {
  if (!pullUp) return pullDown === undefined ? undefined : { ohms: pullDown };
  if (pullDown === undefined) return pullUp;
  const [volts, ohms] = [of('E_L'), of('R_p')];
  const both = sum(pullUp.ohms, pullDown);
  sheet.find({
    symbol: volts,
    meaning: meaning(words.finds.E_L),
    unit: 'V',
    formula: quotient(product(pullUp.volts, pullDown), both),
    rule: rules.divider,
  });
  sheet.find({
    symbol: ohms,
    meaning: meaning(words.finds.R_p),
    unit: 'Ω',
    formula: quotient(product(pullUp.ohms, pullDown), both),
    rule: rules.parallel,
  });
  return { ohms, volts };
}
