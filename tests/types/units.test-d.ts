import type { Ohms, Travel, Volts } from '@truesweep/core';
import { expectTypeOf, test } from 'vitest';

test('a plain number goes in anywhere', () => {
  expectTypeOf<number>().toExtend<Volts>();
  expectTypeOf<number>().toExtend<Travel>();
});

test('volts where ohms are wanted is a type error', () => {
  expectTypeOf<Volts>().not.toExtend<Ohms>();
  expectTypeOf<Travel>().not.toExtend<Volts>();
});
