import { packageBuild } from '../../scripts/packageBuild.js';

export default packageBuild({
  entries: [
    'index',
    'bench',
    'circuit',
    'compare',
    'envelope',
    'expectation',
    'instruments',
    'live',
    'model',
    'pins',
    'quantity',
    'schema',
    'score',
    'shape',
    'simulate',
    'checks',
    'statistics',
    'tracks',
    'codes',
    'contactless',
    'twoState',
    'winding',
  ],
  bundledForRequire: ['index', 'schema'],
});
