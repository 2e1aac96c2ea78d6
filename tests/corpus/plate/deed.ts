import type { Seconds, Travel } from '@truesweep/core';

/** How a turn is made: by hand, at constant speed, or with a screwdriver in steps. */
export type Manner = 'smooth' | 'plain' | 'even' | 'steps';

/** What the arm does next. */
export type Deed =
  | {
      readonly do: 'turn';
      readonly to: Travel;
      readonly seconds: Seconds;
      readonly manner: Manner;
      /** A cable only pulls; it goes slack when the plate falls behind. */
      readonly byCable?: boolean;
    }
  | { readonly do: 'hold'; readonly seconds: Seconds }
  /** Lets go and waits until the plate lies still and some time more; `brake` of the preload is what fingers still rub. */
  | {
      readonly do: 'release';
      readonly seconds: Seconds;
      readonly brake?: number;
      readonly fade?: Seconds;
    }
  /** Lets go and grips again below a travel. */
  | { readonly do: 'catch'; readonly below: Travel; readonly seconds: Seconds }
  /** Throws the plate up so far, were there no stop, and leaves it. */
  | {
      readonly do: 'flick';
      readonly reach: Travel;
      readonly push: Seconds;
      readonly seconds: Seconds;
    }
  /** Knocks on the housing while the plate rests: it hops so high. */
  | {
      readonly do: 'tap';
      readonly hop: Travel;
      readonly times: number;
      readonly every: Seconds;
    };
