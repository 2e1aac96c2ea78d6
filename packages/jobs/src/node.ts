export { loadJob } from './loadJob.js';
export { readFileBytes } from './readFileBytes.js';
export { writeFileAtomically } from './writeFileAtomically.js';
