import type { Circuit } from '../circuit/circuit.js';
import { outputFunction } from '../expectation/outputFunction.js';
import type { Ohms, Position, Travel, Volts } from '../units.js';

/** Readings beside a crack, and at the stops where it rested there, V. */
export interface CrackReadings {
  readonly closedSide: Volts;
  readonly openSide: Volts;
  readonly closedStop?: Volts;
  readonly openStop?: Volts;
}

/** Rounds in which the crack's resistance is found, each from the readings that the one before made of the track; and halvings. */
const rounds = 12;
const halvings = 30;
/** Of more than so many tracks' resistance a crack is open: what is read beside it lies within half a percent of an end. */
const mostTracks = 200;

/**
 * Where a crack lies that is a resistance across the track: it adds to what is beyond it on either side, so the readings beside it tell its
 * resistance, and with that each reading its place.
 *
 * @returns The travel of the crack, and how far the stops that follow lie from where the sensor has them, as a part of the travel; nothing
 * where the readings are no such crack's, or where it is open: then they tell no place.
 */
export function crackTravel(
  { closedSide, openSide, closedStop, openStop }: CrackReadings,
  circuit: Circuit,
): { readonly travel: Travel; readonly stopsOff: number } | undefined {
  const { track, closedPosition = 0, openPosition = 1 } = circuit.sensor;
  const rises = openPosition > closedPosition;
  const [below, above] = rises ? [closedSide, openSide] : [openSide, closedSide];
  let whole: Ohms = track;
  for (let round = 0; round < rounds; round++) {
    const at = placeAt(circuit, whole);
    whole = track / (1 - at(above) + at(below));
    if (!(whole > track && whole < mostTracks * track)) return undefined;
  }
  const at = placeAt(circuit, whole);
  const crack = whole - track;
  const underneath = (volts: Volts): Position => (at(volts) * whole) / track;
  const beyond = (volts: Volts): Position => (at(volts) * whole - crack) / track;
  const [onClosedSide, onOpenSide] = rises ? [underneath, beyond] : [beyond, underneath];
  const closed = closedStop === undefined ? closedPosition : onClosedSide(closedStop);
  const open = openStop === undefined ? openPosition : onOpenSide(openStop);
  const travel = Math.min(1, Math.max(0, (underneath(below) - closed) / (open - closed)));
  if (Number.isNaN(travel)) return undefined;
  const off = Math.abs(closed - closedPosition) + Math.abs(open - openPosition);
  return { travel, stopsOff: off / Math.abs(openPosition - closedPosition) };
}

/** Where on a track of this resistance the wiper stands for a reading; at an end for readings beyond it. */
function placeAt(circuit: Circuit, track: Ohms): (volts: Volts) => Position {
  const output = outputFunction({ ...circuit, sensor: { ...circuit.sensor, track } });
  return (volts) => {
    let [low, high] = [0, 1];
    for (let i = 0; i < halvings; i++) {
      const middle = (low + high) / 2;
      if (output(middle) < volts) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
}
