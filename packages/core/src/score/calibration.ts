/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here; logistic regression for verdicts, the largest likelihood for causes.
 */
export const calibration = {
  causes: { power: 0.3, unforeseen: 0.015 },
  grounds: {
    pass: [1.42, -0.45, -3.8],
    fail: [0.03, 0.45, 2.75, -1.7, -5.17],
    marginal: [0.09, 0.5],
    'closed-rest': [0.31],
    level: [3.85],
  },
};
