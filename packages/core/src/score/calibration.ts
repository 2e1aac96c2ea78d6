/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.65 },
  grounds: {
    pass: [0.14, -0.44, -1.43, 0.99],
    fail: [0.12, 0.46, 2.75, -3.79, -3.48],
    marginal: [-0.06, 0.41],
    'closed-rest': [1.58],
    level: [3.58],
  },
};
