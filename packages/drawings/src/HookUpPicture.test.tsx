import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { HookUpPicture } from './HookUpPicture.js';

const bench = { source: 5, limiter: 1000, track: 4700 };

test('it says what is hooked up, with the values that were entered', () => {
  const svg = renderToString(<HookUpPicture id="b" {...bench} />);
  for (const text of ['5\u00a0V', '1\u00a0kΩ', '4.7\u00a0kΩ', 'recorder', 'limiter', 'signal'])
    expect(svg).toContain(`>${text}</text>`);
  expect(svg).toContain('A supply of 5\u00a0V feeds the sensor');
  expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
});

test('a meter shows its reading, and the pins bear the names they were given', () => {
  const terminals = { supply: 'A', ground: 'C', signal: 'B' };
  const svg = renderToString(
    <HookUpPicture id="b" {...bench} instrument="digits" reading={0.417} terminals={terminals} />,
  );
  for (const text of ['417\u00a0mV', 'meter', 'A', 'B', 'C'])
    expect(svg).toContain(`>${text}</text>`);
});
