import { expect, test } from 'vitest';
import { spreadApart } from './spreadApart.js';

test('heights far enough from the line stay', () => {
  expect(spreadApart([200, 80], 140, 16)).toEqual([200, 80]);
  expect(spreadApart([80, 200], 140, 16)).toEqual([80, 200]);
});

test('heights too near move off it, each to its own side', () => {
  expect(spreadApart([145, 135], 140, 16)).toEqual([156, 124]);
  expect(spreadApart([135, 145], 140, 16)).toEqual([124, 156]);
  expect(spreadApart([140, 140], 140, 16)).toEqual([156, 124]);
});
