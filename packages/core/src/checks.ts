// What comes in checked: rules for fields, and what the other packages check by. An entry for those who use no more; `index.ts` has everything.
export { checkSweep } from './capture/checkSweep.js';
export { InputError, isInputError, type TextPlace } from './errors.js';
export { checkExpectation } from './expectation/checkExpectation.js';
export { checkFields, type FieldRule, type FieldRules, listOf } from './fields.js';
export type { InputErrorCode } from './inputErrorCode.js';
export { nearestName } from './nearestName.js';
export { quantityPattern } from './quantity/quantityPattern.js';
export { checkScore } from './score/checkScore.js';
