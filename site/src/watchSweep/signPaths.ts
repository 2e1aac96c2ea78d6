import type { Finding } from '@truesweep/core';

/** A drawn sign about its middle; an open one is not filled. */
interface Sign {
  readonly path: string;
  readonly isOpen?: true;
}

/** The signs of findings, as drawings have them, of departures without a kind, and of hints: each has its own shape, so that none needs a colour. */
export const signPaths: Readonly<Record<Finding['kind'] | 'abrupt' | 'hint', Sign>> = {
  dropout: { path: 'M-5,-4h10l-5,9z' },
  spike: { path: 'M-5,4h10l-5,-9z' },
  step: { path: 'M-5,4h5v-8h5', isOpen: true },
  'dead-spot': { path: 'M-5,-4h10v8h-10z' },
  rough: { path: 'M-6,0l3,-4l3,8l3,-8l3,4', isOpen: true },
  abrupt: { path: 'M0,-5l5,5l-5,5l-5,-5z' },
  hint: { path: 'M0,-5.5l6,10.5h-12zM0,-1.5v3M0,3.2v0.6', isOpen: true },
};
