import { checkText, type FieldRule, listOf } from '@truesweep/core';

/** Rules of what sentences are made of. */
export const texts = /* @__PURE__ */ listOf(checkText);
/** Two terminals. */
export const pairRule = /* @__PURE__ */ listOf(checkText, 2, 2);

/** One of the codes that a map has a text for. */
export function codeOf(labels: object): FieldRule {
  return Object.keys(labels);
}
