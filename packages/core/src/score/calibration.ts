/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.9 },
  grounds: {
    pass: [1.01, -0.35, -3.85, 0.82],
    fail: [-2.21, 0.59, 3.79, -2.02, -1.34],
    marginal: [0.75, 0.28],
    'closed-rest': [1.87],
    level: [3.86],
  },
};
