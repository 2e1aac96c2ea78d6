import { expect, test } from 'vitest';
import manifest from '../package.json' with { type: 'json' };
import { version } from './version.js';

test('is that of the manifest', () => {
  expect(version).toBe(manifest.version);
});
