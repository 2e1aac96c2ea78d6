// What comes in checked: rules for fields, and what the other packages check by. An entry for those who use no more; `index.ts` has everything.
export { checkRecorder } from './capture/checkRecorder.js';
export { checkSweep } from './capture/checkSweep.js';
export { checkFields } from './checks/checkFields.js';
export { checkReadable } from './checks/checkReadable.js';
export { checkText } from './checks/checkText.js';
export { listOf } from './checks/listOf.js';
export { nearestName } from './checks/nearestName.js';
export { InputError, isInputError, type TextPlace } from './errors.js';
export { checkExpectation } from './expectation/checkExpectation.js';
export type { FieldRule, FieldRules } from './fields.js';
export type { InputErrorCode } from './inputErrorCode.js';
export { quantityPattern } from './quantity/quantityPattern.js';
export { checkScore } from './score/checkScore.js';
