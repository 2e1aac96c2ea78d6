import { expect, test } from 'vitest';
import { headOfLines } from './headOfLines.js';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const headOf = (...parts: string[]) => {
  const head = headOfLines();
  for (const part of parts) head.add(bytesOf(part), 0);
  return new TextDecoder().decode(head.bytes());
};

test('whole lines without their checks, begun and ended in the middle of one', () => {
  expect(headOf('5,853*9F1E\n1000,85,8', '53*E189\n2000,85')).toBe('1000,85,853\n');
});

test('a heading comes first, wherever it came', () => {
  expect(headOf('time,signal\n0,1\n1,2\n')).toBe('time,signal\n0,1\n1,2\n');
  expect(headOf('0,1\n1,2\ntime,signal*5F39\n2,3\n')).toBe('time,signal\n1,2\ntime,signal\n2,3\n');
});

test('a heading that comes first is whole where it has the fields of the line below it', () => {
  const begins = (text: string) => {
    const head = headOfLines();
    head.add(bytesOf(text), 0);
    return head.isBegun() && head.beginsWithHeading();
  };
  expect(begins('time,signal\n0,1\n')).toBe(true);
  expect(begins('gnal\n0,1\n')).toBe(false);
  expect(begins('10,1\n11,1\n')).toBe(false);
  expect(begins('time,signal\n0,')).toBe(false);
});

test('hands out the heading as it came, with a line end of its own', () => {
  const heading = (text: string) => {
    const head = headOfLines();
    head.add(bytesOf(text), 0);
    const found = head.heading();
    return found && new TextDecoder().decode(found);
  };
  expect(heading('time,signal*5F39\r\n0,1*9F1E\r\n1,')).toBe('time,signal*5F39\n');
  expect(heading('0,1\ntime,signal\n1,2\n')).toBe('time,signal\n');
  expect(heading('gnal\n1,2\n')).toBeUndefined();
});

test('lines may end by CR alone', () => {
  expect(headOf('time,signal\r0,1\r1,2\r2')).toBe('time,signal\n0,1\n1,2\n');
  const head = headOfLines();
  head.add(bytesOf('0,1\r1,2\r2'), 0);
  expect(head.isBegun()).toBe(true);
});
