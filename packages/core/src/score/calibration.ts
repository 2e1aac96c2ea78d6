/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.8 },
  grounds: {
    pass: [-0.14, -0.45, -3.92, 0.93],
    fail: [-0.31, 0.47, 3.02, -2.37, -4.89],
    marginal: [0.09, 0.5],
    'closed-rest': [0.31],
    level: [3.85],
  },
};
