import { packageBuild } from '../../scripts/packageBuild.js';

export default packageBuild({
  entries: ['index', 'pages', 'sensors', 'working'],
  bundledForRequire: ['index'],
});
