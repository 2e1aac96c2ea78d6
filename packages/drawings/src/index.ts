export { CircuitDrawing, type CircuitDrawingProps } from './CircuitDrawing.js';
export { CurveDrawing, type CurveDrawingProps } from './CurveDrawing.js';
export type { CurveMarker } from './curveLayout.js';
export { TraceDrawing, type TraceDrawingProps } from './TraceDrawing.js';
export { TravelMapDrawing, type TravelMapDrawingProps } from './TravelMapDrawing.js';
export type { WholeSweep } from './traceLayout.js';
export { traceColumns, tracePart } from './tracePlot.js';
