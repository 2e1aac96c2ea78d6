/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.65 },
  grounds: {
    pass: [0.27, -0.43, -1.41, 0.95],
    fail: [-0.56, 0.49, 3.66, -1.55, -2.32],
    marginal: [0.93, 0.33],
    'closed-rest': [1.52],
    level: [3.87],
  },
};
