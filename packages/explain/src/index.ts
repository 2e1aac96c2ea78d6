export { explainOperatingPoint } from './circuit/explainOperatingPoint.js';
export type { CircuitMethod } from './circuit/output.js';
export { workingHtml } from './workingHtml.js';
export { workingLatex } from './workingLatex.js';
export { workingText } from './workingText.js';
