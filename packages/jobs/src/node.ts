export { filePieces } from './filePieces.js';
export { loadAnyJob } from './loadAnyJob.js';
export { loadJob } from './loadJob.js';
export { readFileBytes } from './readFileBytes.js';
export { saveJob } from './saveJob.js';
export { writeFileAtomically } from './writeFileAtomically.js';
