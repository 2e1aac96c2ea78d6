import { type FunctionComponent, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { CalculatorProps } from '../forms/Calculator.js';
import { Coil } from './Coil.js';
import { OpenPort } from './OpenPort.js';

const pages: readonly (readonly [string, FunctionComponent<CalculatorProps>, RegExp])[] = [
  ['a pump', OpenPort, /A hand pump only, never compressed air; no fuel vapour/],
  ['a coil', Coil, /Never feed a coil of a few ohms from a battery for more than an instant/],
];

test.each(pages)('the page of %s has its caution before any script runs', (_, Page, said) => {
  expect(renderToString(h(Page, {}))).toMatch(said);
});
