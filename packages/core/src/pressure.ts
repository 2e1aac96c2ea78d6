// Pressure sensors: what they must read. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { type HeldStep, heldSteps } from './pressure/heldSteps.js';
export { leakByDrift, type StepPressure } from './pressure/leakByDrift.js';
export { leakTime } from './pressure/leakTime.js';
export { pressureFromRatio, pressureRatio, type RatioBand } from './pressure/pressureRatio.js';
export type { ErrorFactor, PressureRow, PressureSensor } from './pressure/pressureSensor.js';
