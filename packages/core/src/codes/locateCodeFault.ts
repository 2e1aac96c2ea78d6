import { InputError } from '../errors.js';
import { checkFields } from '../fields.js';
import { type CodeKind, entryOf, knownCodes } from './codeTable.js';

/** Where the control unit sees the signal, by its code or by volts: low, high, or somewhere between. */
export type SeenSignal = 'low' | 'high' | 'between';

/** What was seen of a code with the sensor plugged in and unplugged. */
export interface CodeObservations {
  /** The code that is set with the sensor plugged in, one of those that `readTroubleCode` knows. */
  readonly code: string;
  /** What the control unit sees with the sensor unplugged; left out where nobody looked. */
  readonly unplugged?: SeenSignal;
  /**
   * What it sees with the sensor unplugged and the plug bridged: a thermistor's two terminals; of a pressure sensor the signal to ground where the unit pulls it up, to the
   * supply where it pulls it down. Left out where nobody looked.
   */
  readonly bridged?: SeenSignal;
  /** The leads by an ohmmeter, unplugged at both ends; left out where nobody measured. */
  readonly leads?: 'sound' | 'shorted' | 'open';
  /** Whether the unit pulls the signal up or down: of a pressure sensor only, where it differs from machine to machine; a thermistor is pulled up. */
  readonly pull?: 'up' | 'down';
  /** Whether the supply stands at the plug: of a pressure sensor only. */
  readonly supply?: 'right' | 'missing';
}

/** Where a fault lies that set a code. */
export type FaultPlace =
  | 'sensor'
  | 'wiring-short'
  | 'wiring-open'
  | 'control-unit'
  | 'control-unit-or-wiring'
  | 'cannot-tell';

/** What the conclusion rests on. */
export type CodeReason =
  /** The sensor was plugged in: nothing is told of a part. */
  | 'plugged-in-only'
  /** Unplugged or bridged it shows something between: a value that the unit puts in place of the signal is no reading. */
  | 'substitute-value'
  /** The short is there without the sensor. */
  | 'stays-unplugged'
  /** The short went with the sensor. */
  | 'gone-unplugged'
  /** Unplugged a signal that isn't connected looks as the code does. */
  | 'looks-unplugged'
  /** The bridge at the plug isn't seen. */
  | 'ignores-bridge'
  /** What the plug is made to show, the unit sees. */
  | 'follows-plug'
  /** The observations can't all be true at once: something comes and goes. */
  | 'contradictory'
  | 'leads-shorted'
  | 'leads-open'
  /** No supply at the plug. */
  | 'no-supply'
  /** It isn't known which way the unit pulls the signal. */
  | 'pull-unknown';

/** What to look at next. */
export type CodeStep =
  | 'unplug'
  | 'bridge'
  | 'read-volts'
  | 'measure-leads'
  | 'measure-supply'
  | 'measure-sensor'
  | 'move-leads'
  | 'find-pull';

/** Where a fault lies, why, and what to look at next. */
export interface CodeFault {
  /** Where it lies, or that it can't be told yet. */
  readonly conclusion: FaultPlace;
  /** What that rests on. */
  readonly because: CodeReason;
  /** What to look at next; left out where nothing more is to be told. */
  readonly next?: CodeStep;
}

/**
 * Whose fault a trouble code of a temperature or pressure sensor is: the sensor's, the wiring's or the control unit's.
 *
 * A short or an open is the sensor's only where it went with the sensor: with the plug off the signal must go where the control unit pulls it, and with the plug bridged to the other
 * side. What stays is in front of the plug; the leads by an ohmmeter tell wiring and unit apart. A value that a unit shows in place of the signal is no reading.
 *
 * Bridge only what the machine's service manual lets you bridge, and never the supply to ground.
 *
 * Method: the circuit of a pulled signal; unplug and bridge as service manuals do (common practice, no source).
 *
 * @throws InputError at `seen…`; `unexpected` for `pull` or `supply` of a thermistor.
 *
 * @example
 * locateCodeFault({ code: 'P0117' }) // => { conclusion: 'cannot-tell', because: 'plugged-in-only', next: 'unplug' }
 * locateCodeFault({ code: 'P0117', unplugged: 'high' }) // => { conclusion: 'sensor', because: 'gone-unplugged', next: 'measure-sensor' }
 * locateCodeFault({ code: 'P0117', unplugged: 'low' }).conclusion // => 'control-unit-or-wiring'
 * locateCodeFault({ code: 'P0118', unplugged: 'high', bridged: 'low' }).conclusion // => 'sensor'
 */
export function locateCodeFault(seen: CodeObservations): CodeFault {
  checkSeen(seen);
  const { leads, supply } = seen;
  if (contradicts(seen)) return unsure('contradictory', 'move-leads');
  if (leads === 'shorted') return { conclusion: 'wiring-short', because: 'leads-shorted' };
  if (leads === 'open') return { conclusion: 'wiring-open', because: 'leads-open' };
  return supply === 'missing' ? beforeThePlug('no-supply', leads) : byPlug(seen);
}

/**
 * Whether what was seen can't be true at once. Leads that are open leave the signal where it is pulled, plugged in or not; leads that are shorted hold it on the other side, or of a
 * pressure sensor on the side of whichever lead they touch. And a code of the pulled level can't go to the other side with the plug off.
 */
function contradicts({ code, unplugged, bridged, leads, pull, supply }: CodeObservations): boolean {
  const { sensor, kind } = entryOf(code);
  const isPressure = sensor === 'manifold-pressure';
  const levels = [kind, unplugged, bridged].filter((one) => one === 'low' || one === 'high');
  if (isPressure && leads === 'shorted') return new Set(levels).size > 1;
  if (isPressure && pull === undefined) return false;
  const free = pull === 'down' ? 'low' : 'high';
  const other = free === 'low' ? 'high' : 'low';
  // With an open lead of the supply the signal is the sensor's, fed by nothing.
  if (leads === 'open') return supply !== 'missing' && levels.includes(other);
  if (leads === 'shorted') return levels.includes(free);
  return kind === free && unplugged === other;
}

/** In front of the plug: leads that are sound leave the unit. */
function beforeThePlug(because: CodeReason, leads: CodeObservations['leads']): CodeFault {
  return leads === 'sound'
    ? { conclusion: 'control-unit', because }
    : { conclusion: 'control-unit-or-wiring', because, next: 'measure-leads' };
}

const unsure = (because: CodeReason, next: CodeStep): CodeFault => ({
  conclusion: 'cannot-tell',
  because,
  next,
});

/** What the signal did with the plug off and bridged. */
function byPlug({ code, unplugged, bridged, leads, pull, supply }: CodeObservations): CodeFault {
  const { sensor, kind } = entryOf(code);
  const isPressure = sensor === 'manifold-pressure';
  if (unplugged === undefined) return unsure('plugged-in-only', 'unplug');
  if (isPressure && pull === undefined) return unsure('pull-unknown', 'find-pull');
  if (unplugged === 'between' || bridged === 'between')
    return unsure('substitute-value', 'read-volts');
  const free = pull === 'down' ? 'low' : 'high';
  if (unplugged !== free) {
    return bridged === free
      ? unsure('contradictory', 'move-leads')
      : beforeThePlug('stays-unplugged', leads);
  }
  if (bridged === free) return beforeThePlug('ignores-bridge', leads);
  // Without a bridge only a short that went tells something: nothing connected looks as an open sensor does.
  const wasShort = (kind === 'low' || kind === 'high') && kind !== free;
  if (bridged === undefined && !wasShort) return unsure('looks-unplugged', 'bridge');
  if (isPressure && supply === undefined) return unsure('follows-plug', 'measure-supply');
  return behindThePlug(kind, bridged === undefined ? 'gone-unplugged' : 'follows-plug');
}

/** Wiring and unit follow the plug: what is left of the code. */
function behindThePlug(kind: CodeKind, because: CodeReason): CodeFault {
  if (kind === 'intermittent') return unsure(because, 'move-leads');
  // A value out of range or of behaviour may be the engine's: only the sensor's own curve tells.
  if (kind === 'range') return unsure(because, 'measure-sensor');
  return { conclusion: 'sensor', because, next: 'measure-sensor' };
}

function checkSeen(seen: CodeObservations): void {
  const signal = ['low', 'high', 'between'];
  checkFields(seen, 'seen', {
    code: knownCodes,
    'unplugged?': signal,
    'bridged?': signal,
    'leads?': ['sound', 'shorted', 'open'],
    'pull?': ['up', 'down'],
    'supply?': ['right', 'missing'],
  });
  const extra = (['pull', 'supply'] as const).find((name) => seen[name] !== undefined);
  if (extra && entryOf(seen.code).sensor !== 'manifold-pressure') {
    throw new InputError(
      'unexpected',
      `seen.${extra}`,
      `seen.${extra} is stated with ${seen.code}, a thermistor's code; it belongs to a pressure sensor, for a thermistor is pulled up and has no supply of its own.`,
    );
  }
}
