import { InputError } from '@truesweep/core';
import { expect, test } from 'vitest';
import { inFlags } from './inFlags.js';

test('options are said as they are typed', () => {
  const error = new InputError(
    'ambiguous-comma',
    'options.signalUnit',
    'Say which by the options decimal and delimiter, or export with a decimal point; name it by the option timeColumn.',
  );
  expect(inFlags(error)).toMatchObject({
    path: '--signal-unit',
    message:
      'Say which by --decimal and --delimiter, or export with a decimal point; name it by --time-column.',
  });
  expect(inFlags('else')).toBe('else');
});
