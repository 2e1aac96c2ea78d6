/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.8 },
  grounds: {
    pass: [0.21, -0.44, -1.6, 1.01],
    fail: [-1.22, 0.62, 4.44, -1.82, -2.74],
    marginal: [0.21, 0.45],
    'closed-rest': [1.52],
    level: [3.88],
  },
};
