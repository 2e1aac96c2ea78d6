// When a switch changed in a recording, and how it bounced. An entry for those who use no more; `index.ts` has everything.
export {
  type StateChange,
  type StateLevels,
  type SwitchBounce,
  switchBounce,
} from './bounce/switchBounce.js';
export { InputError, type TextPlace } from './errors.js';
