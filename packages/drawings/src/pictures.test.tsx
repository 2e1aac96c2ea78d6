import { chooseSetting } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { SettingPicture } from './SettingPicture.js';
import { TerminalsPicture } from './TerminalsPicture.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 1e6 },
};

test('the front shows what the setting says', () => {
  const setting = chooseSetting(circuit, { width: 0.01, travelTime: 2 });
  const svg = renderToString(<SettingPicture id="s" setting={setting} />);
  expect(setting.timePerDivision).toBe(0.5);
  expect(svg).toContain('>500\u00a0ms</text>');
  expect(svg).toContain(`×${setting.probe}`);
  expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
});

test.each(['closed', 'open'] as const)('the throttle is held %s', (stop) => {
  const svg = renderToString(<TerminalsPicture id="t" stop={stop} />);
  expect(svg).toContain(`held ${stop}`);
  for (const pin of ['A', 'B', 'C']) expect(svg).toContain(`>${pin}</text>`);
});
