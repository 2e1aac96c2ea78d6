import type { Circuit, Criteria, Ratings, Tolerances } from '@truesweep/core';
import type {
  circuitSchema,
  criteriaSchema,
  ratingsSchema,
  tolerancesSchema,
} from '@truesweep/core/schema';
import type { InferOutput } from 'valibot';
import { expectTypeOf, test } from 'vitest';

/** The same type without readonly and without units: what of it JSON can show. */
type Plain<T> = T extends string
  ? T
  : T extends number
    ? number
    : { -readonly [Name in keyof T]: Plain<T[Name]> };

test('what a schema reads goes in where core wants it', () => {
  expectTypeOf<InferOutput<typeof circuitSchema>>().toExtend<Circuit>();
  expectTypeOf<InferOutput<typeof tolerancesSchema>>().toExtend<Tolerances>();
  expectTypeOf<InferOutput<typeof ratingsSchema>>().toExtend<Ratings>();
  expectTypeOf<InferOutput<typeof criteriaSchema>>().toExtend<Criteria>();
});

test("a schema's fields are those of core's type: none less, none more", () => {
  expectTypeOf<Plain<InferOutput<typeof circuitSchema>>>().toEqualTypeOf<Plain<Circuit>>();
  expectTypeOf<Plain<InferOutput<typeof tolerancesSchema>>>().toEqualTypeOf<Plain<Tolerances>>();
  expectTypeOf<Plain<InferOutput<typeof ratingsSchema>>>().toEqualTypeOf<Plain<Ratings>>();
  expectTypeOf<Plain<InferOutput<typeof criteriaSchema>>>().toEqualTypeOf<Plain<Criteria>>();
});
