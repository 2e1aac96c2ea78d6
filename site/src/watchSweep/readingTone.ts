import type { Fraction } from '@truesweep/core';

/** Tones at the closed and at the open stop, Hz: two octaves. */
const [lowest, highest] = [220, 880];
/** The tone glides to a new reading in about this time, s. */
const glide = 0.03;
const click = { hertz: 1800, seconds: 0.04 } as const;

/** A tone that follows a reading, and a click. */
export interface ReadingTone {
  /** How far the reading is from its closed to its open level. */
  readonly follow: (part: Fraction) => void;
  readonly click: () => void;
  /** From 0 to 1. */
  readonly setVolume: (volume: Fraction) => void;
  readonly end: () => void;
}

/** Begins a tone. */
export function readingTone(volume: Fraction): ReadingTone {
  const context = new AudioContext();
  const loud = new GainNode(context, { gain: 0 });
  loud.connect(context.destination);
  const soft = new GainNode(context, { gain: 0.3 });
  soft.connect(loud);
  const tone = new OscillatorNode(context, { type: 'triangle', frequency: lowest });
  tone.connect(soft);
  tone.start();
  const setVolume = (part: Fraction): void => {
    // Ears hear ratios: half the way is a fraction of the power.
    loud.gain.setTargetAtTime(part ** 2, context.currentTime, glide);
  };
  setVolume(volume);
  return {
    follow(part) {
      const hertz = lowest * (highest / lowest) ** Math.min(1, Math.max(0, part));
      tone.frequency.setTargetAtTime(hertz, context.currentTime, glide);
    },
    click() {
      const begin = context.currentTime;
      const short = new GainNode(context, { gain: 1 });
      short.gain.setTargetAtTime(0, begin, click.seconds / 4);
      short.connect(loud);
      const knock = new OscillatorNode(context, { type: 'square', frequency: click.hertz });
      knock.connect(short);
      knock.start(begin);
      knock.stop(begin + click.seconds);
    },
    setVolume,
    end: () => void context.close(),
  };
}
