// Values of one thing over time: whether they change. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { fitTrend, type Trend, type TrendOptions, type TrendPoint } from './trend/fitTrend.js';
export {
  type Forecast,
  forecast,
  forecastEnd,
  type LimitMet,
  whenLimitIsMet,
} from './trend/forecast.js';
export { pooledScatter, type Scatter } from './trend/pooledScatter.js';
