/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.65 },
  grounds: {
    pass: [0.58, -0.34, -3.07, 1.05],
    fail: [-0.65, 0.52, 2.61, -2.95, -2.57],
    marginal: [-0.39, 0.46],
    'closed-rest': [1.72],
    level: [3.88],
  },
};
