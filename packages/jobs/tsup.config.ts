import { packageBuild } from '../../scripts/packageBuild.js';
import { jobJsonSchema } from './src/jobJsonSchema.js';

export default packageBuild({
  entries: ['index', 'node'],
  texts: { 'job.schema.json': () => `${JSON.stringify(jobJsonSchema(), undefined, 2)}\n` },
});
