/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.95 },
  grounds: {
    pass: [-1.55, -0.44, 2.27, 1.66],
    fail: [-1.16, 0.56, 2.86, -3.3, -5.92],
    marginal: [0.01, 0.33],
    'closed-rest': [1.44],
    level: [3.71],
  },
};
