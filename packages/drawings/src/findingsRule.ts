import { checkScore, type FieldRule, type Finding } from '@truesweep/core';

export const findings: FieldRule = (value, path) =>
  checkScore({ findings: value as Finding[] }, path.replace(/\.findings$/, ''), ['findings']);
