/**
 * What makes the odds of the model hold, which is never exactly right. Fitted by `node scripts/calibrate.mjs` to recordings of the four
 * modelled worlds of `tests/corpus`, which then writes them here: the power of the causes' likelihoods by the largest likelihood of what is
 * told of them, the grounds of a verdict by logistic regression, for each its base and the slopes of the numbers that `confidence.ts` gives.
 */
export const calibration = {
  causes: { power: 0.9 },
  grounds: {
    pass: [0.57, -0.35, -3.54, 1.05],
    fail: [-1.63, 0.57, 3.23, -2.62, -3.17],
    marginal: [0.45, 0.35],
    'closed-rest': [1.87],
    level: [3.87],
  },
};
