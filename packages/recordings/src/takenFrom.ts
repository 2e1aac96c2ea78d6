/**
 * What a column, its unit or the sample rate was taken from. `values`: the fields tell it; `place`: it is the first column that can be it;
 * `assumed`: nothing told it.
 */
export type TakenFrom = 'option' | 'heading' | 'preamble' | 'values' | 'place' | 'assumed';
