/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 1 },
  grounds: {
    pass: [-2.06, -0.47, 2.82, 2],
    fail: [1.46, 0.26, 2.77, 0.53, -7.16],
    marginal: [0.75, 0.24],
    'closed-rest': [0.88],
    level: [3.83],
  },
};
