// What writes a working that was made elsewhere: an entry that needs no mathjs. `index.ts` has everything.
export type {
  Calculation,
  Comparison,
  Relation,
  Rule,
  Step,
  StepInput,
  Table,
  Working,
} from './working.js';
export { workingHtml } from './workingHtml.js';
export { workingLatex } from './workingLatex.js';
export { workingText } from './workingText.js';
