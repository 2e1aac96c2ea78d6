export { checkRecord } from './checkRecord.js';
export type { EndRecord, HistoryRecord } from './historyRecord.js';
export { type HistoryPoint, type HistoryQuantity, historyQuantities } from './quantities.js';
export { type ReadRecords, readRecords } from './readRecords.js';
export { recordOf } from './recordOf.js';
export { recordOfScore } from './recordOfScore.js';
export {
  type QuantityHistory,
  type SensorHistory,
  type SharedScatter,
  sensorHistory,
  sharedScatter,
} from './sensorHistory.js';
