import { checkFields, type FieldRules } from '../fields.js';
import { between, refuse, wholeBetween, yesOrNo } from '../guard.js';
import type { Trend } from './fitTrend.js';

const most = 1e30;
const any = between(-most, most);
const notNegative = between(0, most);

/** Degrees of freedom, which may be as many as there are numbers. */
function degrees(value: unknown, path: string): void {
  if (value !== Infinity) between(0, 1e9)(value, path);
}

const rules: FieldRules = {
  count: wholeBetween(2, 1e9),
  from: any,
  to: any,
  slope: any,
  slopeUncertainty: notNegative,
  expanded: notNegative,
  coverageFactor: notNegative,
  coverage: between(0.5, 0.9999),
  degreesOfFreedom: degrees,
  deviation: notNegative,
  'own?': { deviation: notNegative, degreesOfFreedom: degrees },
  meanAt: any,
  mean: any,
  changed: yesOrNo,
};

/** Refuses anything but a trend as it was told; returns it. */
export function checkTrend(trend: Trend): Trend {
  checkFields(trend, 'trend', rules);
  if (!(trend.from < trend.to))
    refuse(trend.to, 'trend.to', 'a time after trend.from', 'out-of-order');
  return trend;
}
