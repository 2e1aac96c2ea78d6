import type {
  Circuit,
  Farads,
  Hertz,
  Ohms,
  Seconds,
  Tolerances,
  Travel,
  Volts,
} from '@truesweep/core';

/** A smooth part of a stroke: its share of the way, when it begins and how long it takes. */
export interface Submovement {
  readonly share: number;
  readonly start: Seconds;
  readonly seconds: Seconds;
}

/** What the technician does next. */
export type Move =
  | { readonly kind: 'rest'; readonly seconds: Seconds }
  | {
      readonly kind: 'stroke';
      readonly to: Travel;
      readonly seconds: Seconds;
      readonly parts: readonly Submovement[];
      /** Where this return to closed comes to rest; 0 at the stop itself. */
      readonly closedAt: Travel;
    }
  | {
      readonly kind: 'snap';
      /** Acceleration by the preloaded spring at the stop, 1/s², and how much it grows over the travel. */
      readonly acceleration: number;
      readonly stiffening: number;
      /** Viscous drag, 1/s. */
      readonly drag: number;
      /** Natural frequency and damping ratio of the stop. */
      readonly stopHertz: Hertz;
      readonly stopDamping: number;
      readonly closedAt: Travel;
    };

/** The hand: filtered noise and tremor as standard deviations of travel, and how firmly it presses on the open stop. */
export interface Hand {
  readonly noise: Travel;
  readonly hertz: Hertz;
  readonly tremor: Travel;
  readonly tremorHertz: Hertz;
  readonly press: Travel;
}

/** Random telegraph chatter: mean times open and closed. */
export interface Chatter {
  readonly open: Seconds;
  readonly closed: Seconds;
}

export type Fault =
  | {
      readonly kind: 'worn-spot';
      readonly from: Travel;
      readonly to: Travel;
      /** Contact resistance while open; `lifted` for no contact. */
      readonly ohms: Ohms | 'lifted';
      /** Absent for dirt that stays put. */
      readonly chatter?: Chatter;
      /** Probability of a pass that shows it. */
      readonly chance: number;
    }
  | {
      readonly kind: 'loose-connection';
      readonly lead: 'signal' | 'supply' | 'ground';
      readonly bursts: readonly {
        readonly time: Seconds;
        readonly seconds: Seconds;
        readonly chatter: Chatter;
      }[];
    }
  | {
      readonly kind: 'interference';
      readonly bursts: readonly {
        readonly time: Seconds;
        readonly volts: Volts;
        /** Of the damped oscillation; 0 for a one-sided pulse. */
        readonly hertz: Hertz;
        readonly decay: Seconds;
      }[];
    }
  | { readonly kind: 'cracked'; readonly travel: Travel; readonly shift: number }
  | { readonly kind: 'slipped'; readonly time: Seconds; readonly shift: Travel }
  | { readonly kind: 'dead-spot'; readonly from: Travel; readonly to: Travel }
  | {
      readonly kind: 'rough';
      readonly from: Travel;
      readonly to: Travel;
      /** Standard deviation, V, of the part fixed in travel and of the part new on each pass. */
      readonly fixed: Volts;
      readonly fresh: Volts;
      /** Grain of the fixed part, in travel. */
      readonly grain: Travel;
    }
  | { readonly kind: 'no-output'; readonly volts: Volts };

export interface RecorderPlan {
  readonly name: 'oscilloscope' | '12-bit logger' | '16-bit recorder' | 'slow logger' | 'meter';
  readonly interval: Seconds;
  /** Each reading is the mean over this time before its stamp; 0 for a picked sample. */
  readonly aperture: Seconds;
  readonly low: Volts;
  readonly high: Volts;
  readonly step: Volts;
  readonly noise: Volts;
  readonly hum?: {
    readonly volts: Volts;
    readonly hertz: Hertz;
    readonly harmonics: readonly number[];
  };
  /** Systematic error of this very instrument, and the standard uncertainty that covers it. */
  readonly offset: Volts;
  readonly gain: number;
  readonly uncertainty: Volts;
  /** Standard deviation of the stamps around the true instants. */
  readonly jitter: Seconds;
  readonly gaps: readonly { readonly time: Seconds; readonly seconds: Seconds }[];
}

/** What the technician tells the scorer of the recorder. */
export interface ToldRecorder {
  readonly resolution?: Volts;
  readonly range?: { readonly low: Volts; readonly high: Volts };
  readonly uncertainty?: Volts;
}

/** One case as plain data: who moves what, how it is hooked up and recorded, and what is wrong. */
export interface CorpusPlan {
  readonly seed: number;
  readonly className: string;
  /** The hook-up as the technician has it on paper, and as it is. */
  readonly nominal: Circuit;
  readonly actual: Circuit;
  readonly tolerances: Tolerances;
  readonly cable: Farads;
  readonly hand: Hand;
  readonly moves: readonly Move[];
  readonly faults: readonly Fault[];
  readonly recorder: RecorderPlan;
  readonly told: ToldRecorder;
}
