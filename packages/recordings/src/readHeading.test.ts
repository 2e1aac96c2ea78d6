import { describe, expect, it } from 'vitest';
import { joinHeadings, readHeading } from './readHeading.js';

describe('readHeading', () => {
  it.each([
    ['time (s)', { name: 'time', timeUnit: 's' }],
    ['t [ms]', { name: 't', timeUnit: 'ms' }],
    ['# time (\u00b5s)', { name: 'time', timeUnit: 'µs' }],
    ['Time/us', { name: 'Time', timeUnit: 'µs' }],
    ['Seconds', { name: 'Seconds', timeUnit: 's' }],
    ['Voltage_mV', { name: 'Voltage', signalUnit: 'mV' }],
    ['U in V', { name: 'U', signalUnit: 'V' }],
    ['Wiper, V', { name: 'Wiper', signalUnit: 'V' }],
    ['(V)', { name: '(V)', signalUnit: 'V' }],
    ['time (min)', { name: 'time', unknownUnit: 'min' }],
    ['TIME_MS', { name: 'TIME', unknownUnit: 'MS' }],
    ['WIPER MV', { name: 'WIPER', unknownUnit: 'MV' }],
    ['Voltage', { name: 'Voltage' }],
    ['time_m', { name: 'time_m' }],
    ['Channel 1', { name: 'Channel 1' }],
  ])('reads “%s”', (cell, heading) => {
    expect(readHeading(cell)).toEqual({ text: cell.replace('# ', ''), ...heading });
  });
});

describe('joinHeadings', () => {
  it('joins names with the units below them', () => {
    expect(joinHeadings(['Time', 'Wiper'], ['(ms)', 'Volt'])).toEqual([
      { text: 'Time', name: 'Time', timeUnit: 'ms' },
      { text: 'Wiper', name: 'Wiper', signalUnit: 'V' },
    ]);
  });

  it('takes no row of names for units', () => {
    expect(joinHeadings(['a', 'b'], ['Time', 'V'])).toBeUndefined();
    expect(joinHeadings(['a', 'b'], ['', ''])).toBeUndefined();
  });
});
