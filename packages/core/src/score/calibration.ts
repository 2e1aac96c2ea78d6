/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here; logistic regression for verdicts, the largest likelihood for causes.
 */
export const calibration = {
  causes: { power: 0.3, unforeseen: 0.015 },
  grounds: {
    pass: [-0.75, -0.49, -3.03, 1.12],
    fail: [-0.04, 0.42, 3.11, -2.32, -4.39],
    marginal: [0.18, 0.53],
    'closed-rest': [0.52],
    level: [3.86],
  },
};
