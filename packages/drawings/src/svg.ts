// The drawings as text, for those without Preact; the entry `@truesweep/drawings/svg`.
export type { CircuitDrawingProps } from './circuitDrawingProps.js';
export { circuitSvg } from './circuitSvg.js';
export type { CurveDrawingProps } from './curveDrawingProps.js';
export type { CurveMarker } from './curveLayout.js';
export { curveSvg } from './curveSvg.js';
export type { TraceDrawingProps } from './traceDrawingProps.js';
export type { WholeSweep } from './traceLayout.js';
export type { TracePlot } from './tracePlot.js';
export { traceColumns, tracePlot } from './tracePlot.js';
export { traceSvg } from './traceSvg.js';
export type { TravelMapDrawingProps } from './travelMapDrawingProps.js';
export { travelMapSvg } from './travelMapSvg.js';
