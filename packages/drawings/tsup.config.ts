import { packageBuild } from '../../scripts/packageBuild.js';

export default packageBuild({
  entries: ['index', 'svg'],
  replaced: { svg: { 'preact/jsx-runtime': 'src/plainElements.ts' } },
  browser: 'svg',
});
