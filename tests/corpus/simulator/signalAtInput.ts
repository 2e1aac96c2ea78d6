import { type Circuit, positionAt, type Seconds } from '@truesweep/core';
import { openInBursts, openInSpot } from './contactOpen.js';
import { effectiveTravel } from './effectiveTravel.js';
import { addInterference } from './interferencePulses.js';
import { liftedLevel, outputTable } from './outputTable.js';
import type { CorpusPlan, Fault } from './plan.js';
import type { RandomStream } from './randomStream.js';
import { addRoughness } from './roughness.js';

/** The voltage at the recorder's input on the fine grid, with the plan's faults. */
export function signalAtInput(
  plan: CorpusPlan,
  faults: readonly Fault[],
  travel: Float64Array,
  step: Seconds,
  random: RandomStream,
): Float64Array {
  const dead = faults.find((fault) => fault.kind === 'no-output');
  if (dead) return new Float64Array(travel.length).fill(dead.volts);
  const { actual } = plan;
  const { wiper } = effectiveTravel(travel, step, faults);
  const position = positions(actual, wiper, faults);
  const output = outputTable(actual);
  const volts = new Float64Array(position.length);
  for (let i = 0; i < volts.length; i++) volts[i] = output(position[i]!);
  for (const fault of faults)
    if (fault.kind === 'rough') addRoughness(volts, wiper, step, fault, random);
  for (const fault of faults) {
    if (fault.kind === 'worn-spot') {
      const open = openInSpot(wiper, step, fault, random);
      const ohms = fault.ohms === 'lifted' ? Number.POSITIVE_INFINITY : fault.ohms;
      throughContact(volts, position, open, ohms, actual, plan.cable, step);
    }
    if (fault.kind === 'loose-connection') {
      const open = openInBursts(travel.length, step, fault, random);
      if (fault.lead === 'signal')
        throughContact(volts, position, open, Number.POSITIVE_INFINITY, actual, plan.cable, step);
      else withoutLead(volts, position, open, actual, fault.lead);
    }
  }
  for (const fault of faults)
    if (fault.kind === 'interference') addInterference(volts, step, fault);
  return volts;
}

function positions(actual: Circuit, wiper: Float64Array, faults: readonly Fault[]): Float64Array {
  const closed = positionAt(actual.sensor, 0);
  const open = positionAt(actual.sensor, 1);
  const cracks = faults.filter((fault) => fault.kind === 'cracked');
  const place = new Float64Array(wiper.length);
  for (let i = 0; i < place.length; i++) place[i] = closed + (open - closed) * wiper[i]!;
  for (const { travel, shift } of cracks)
    for (let i = 0; i < place.length; i++) if (wiper[i]! > travel) place[i]! += shift;
  for (let i = 0; i < place.length; i++) place[i] = Math.min(1, Math.max(0, place[i]!));
  return place;
}

/**
 * The signal behind a contact resistance where it is marked open: with the signal's and the load's equivalent sources it is
 * V_rest + (V − V_rest)(R_L + R)/(R_L + R + r), approached with (R + r) ∥ R_L times the cable's capacitance.
 */
function throughContact(
  volts: Float64Array,
  position: Float64Array,
  open: Uint8Array,
  ohms: number,
  actual: Circuit,
  cable: number,
  step: number,
): void {
  const { track } = actual.sensor;
  const { pullDown = Number.POSITIVE_INFINITY, pullUp } = actual.load;
  const load = 1 / (1 / pullDown + (pullUp ? 1 / pullUp.ohms : 0));
  const rest = liftedLevel(actual);
  let now = volts[0]!;
  for (let i = 0; i < volts.length; i++) {
    const at = position[i]!;
    const below = at * track;
    const above = (1 - at) * track + actual.limiter;
    const source = (below * above) / (below + above);
    const contact = open[i] ? ohms : 0;
    const series = source + contact;
    const share = contact === Number.POSITIVE_INFINITY ? 0 : (load + source) / (load + series);
    const aim = rest + (volts[i]! - rest) * share;
    const time = cable / (1 / series + 1 / load);
    now = time < step / 12 ? aim : aim + (now - aim) * Math.exp(-step / time);
    volts[i] = now;
  }
}

/** The signal while the supply or the ground lead is interrupted; the sensor then feeds it at once. */
function withoutLead(
  volts: Float64Array,
  position: Float64Array,
  open: Uint8Array,
  actual: Circuit,
  lead: 'supply' | 'ground',
): void {
  const leads = { ...actual.leads, [lead]: Number.POSITIVE_INFINITY };
  const output = outputTable({ ...actual, leads });
  for (let i = 0; i < volts.length; i++) if (open[i]) volts[i] = output(position[i]!);
}
