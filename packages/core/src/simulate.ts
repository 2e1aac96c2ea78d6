// Sweeps of a modelled sensor. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type {
  DeadSpot,
  Interference,
  LooseConnection,
  RoughTrack,
  ShiftedTrack,
  SimulatedFault,
  WornSpot,
} from './simulate/faults.js';
export type { Hold, SimulatedMovement, Snap, Turn } from './simulate/movement.js';
export {
  type SimulatedEvent,
  type SimulatedRecorder,
  type SimulatedSweep,
  type SweepPlan,
  simulateSweep,
} from './simulate/simulateSweep.js';
