import { expect, test } from 'vitest';
import { metricsText } from './metricsText.js';

test('labels and helps are written so that they stay in their line', () => {
  const samples = [{ labels: { file: 'a"b\\c\nd' }, value: Number.POSITIVE_INFINITY }];
  expect(metricsText([{ name: 'a', help: 'One\nline.', type: 'gauge', samples }])).toBe(
    '# HELP a One\\nline.\n# TYPE a gauge\na{file="a\\"b\\\\c\\nd"} +Inf\n',
  );
});
