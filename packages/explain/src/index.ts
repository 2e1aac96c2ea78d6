export { explainLoadingError } from './circuit/explainLoadingError.js';
export { explainOperatingPoint } from './circuit/explainOperatingPoint.js';
export { explainPosition } from './circuit/explainPosition.js';
export type { CircuitMethod } from './circuit/output.js';
export { explainUncertainty } from './windows/explainUncertainty.js';
export { explainWindow } from './windows/explainWindow.js';
export { workingHtml } from './workingHtml.js';
export { workingLatex } from './workingLatex.js';
export { workingText } from './workingText.js';
