export type {
  DrawnBand,
  DrawnReading,
  PressureDrawingProps,
  ThermistorDrawingProps,
} from './bandDrawingProps.js';
export { CircuitDrawing } from './CircuitDrawing.js';
export { CurveDrawing } from './CurveDrawing.js';
export type { CircuitDrawingProps } from './circuitDrawingProps.js';
export type { CurveDrawingProps } from './curveDrawingProps.js';
export type { CurveMarker } from './curveLayout.js';
export { HookUpPicture } from './HookUpPicture.js';
export type { HookUpPictureProps } from './hookUpPictureProps.js';
export { PassesDrawing } from './PassesDrawing.js';
export { PressureDrawing } from './PressureDrawing.js';
export type { DrawnPass, PassesDrawingProps } from './passesDrawingProps.js';
export { SettingPicture, type SettingPictureProps } from './SettingPicture.js';
export { StepsDrawing } from './StepsDrawing.js';
export type { DrawnStretch, StepsDrawingProps } from './stepsDrawingProps.js';
export { TerminalsPicture, type TerminalsPictureProps } from './TerminalsPicture.js';
export { ThermistorDrawing } from './ThermistorDrawing.js';
export { TraceDrawing } from './TraceDrawing.js';
export { TravelMapDrawing } from './TravelMapDrawing.js';
export type { TraceDrawingProps } from './traceDrawingProps.js';
export type { WholeSweep } from './traceLayout.js';
export type { TracePlot } from './tracePlot.js';
export { traceColumns, tracePlot } from './tracePlot.js';
export type { TravelMapDrawingProps } from './travelMapDrawingProps.js';
