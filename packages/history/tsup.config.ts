import { packageBuild } from '../../scripts/packageBuild.js';

export default packageBuild({ entries: ['index', 'node'] });
