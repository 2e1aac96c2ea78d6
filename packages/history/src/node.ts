export {
  type Added,
  type History,
  type HistoryOptions,
  type KnownSensor,
  openHistory,
} from './openHistory.js';
export { recordsInFile } from './recordsInFile.js';
export { saveHistory } from './saveHistory.js';
