import type { Verdict } from '@truesweep/core';

/** An example of the gallery: what it looks like, what it means, how to prove it. */
export interface GalleryExample {
  readonly slug: string;
  readonly title: string;
  /** What the technician sees in the trace. */
  readonly sees: string;
  readonly means: string;
  readonly proof: string;
  /** What judging it comes to. */
  readonly verdict: Verdict;
}

/** The examples in the order of the page: a sound sweep first. */
export const galleryExamples: readonly GalleryExample[] = [
  {
    slug: 'sound',
    title: 'A sound sensor',
    sees: 'Smooth ramps without a tooth, the same closed and open level each time.',
    means: 'Track, wiper and leads are good over the whole travel that was swept.',
    proof:
      'Three sweeps both ways and a snap, seen fast enough; then the closed reading at the machine.',
    verdict: 'pass',
  },
  {
    slug: 'bounce',
    title: 'A bounce on the stop',
    sees: 'As the throttle snaps shut, one to three small hops just above the closed level.',
    means: 'The plate bounces on its stop. That is ordinary, and no fault.',
    proof:
      'The hops shrink, end on the closed level, and are not there when the throttle is closed by hand.',
    verdict: 'pass',
  },
  {
    slug: 'dropout',
    title: 'A dropout',
    sees: 'A needle down to zero, a few milliseconds wide, at the same place of every pass.',
    means:
      'The wiper lifts off the track: wear or dirt at one place, mostly where the throttle stands at idle and cruise.',
    proof:
      'Sweep slowly to and fro over the place: it comes back at the same throttle opening, whatever the leads do.',
    verdict: 'fail',
  },
  {
    slug: 'worn-track',
    title: 'A worn track',
    sees: 'Over a stretch of the ramp the trace is ragged instead of a line.',
    means: 'The track is worn through over that stretch, and the wiper rides on crumbs.',
    proof:
      'Hold the throttle there and move it by a hair: the reading jumps. Elsewhere it is calm.',
    verdict: 'fail',
  },
  {
    slug: 'dirt',
    title: 'Dirt under the wiper',
    sees: 'Dips that do not reach zero, at one place, on some passes and not on others.',
    means:
      'A film of dirt or oxide: the contact’s resistance is high there, and the instrument’s load makes it visible.',
    proof:
      'With a load of 10 kΩ from signal to ground the dips grow; with the meter alone they all but vanish.',
    verdict: 'fail',
  },
  {
    slug: 'dead-spot',
    title: 'A dead spot',
    sees: 'The ramp stands still for a moment while the hand moves on, then jumps to where it should be.',
    means: 'A bridged or smeared stretch of the track: over it the wiper finds one voltage.',
    proof: 'The step of the jump belongs to one throttle opening, opening and closing alike.',
    verdict: 'fail',
  },
  {
    slug: 'cracked-track',
    title: 'A cracked track',
    sees: 'At one place the ramp leaps to another level and goes on from there, back the same way.',
    means: 'The track is broken across or the wiper skips: above the crack all readings are off.',
    proof:
      'Unplug it and measure end to end: the resistance is high, endless, or changes when the housing is pressed.',
    verdict: 'fail',
  },
  {
    slug: 'loose-connection',
    title: 'A loose connection',
    sees: 'Drops to zero here and there, of any length, also while nothing moves.',
    means: 'The signal’s lead, plug or terminal opens. The sensor itself may be good.',
    proof:
      'Hold the shaft still and flex the harness while you record; measure each lead with an ohmmeter.',
    verdict: 'fail',
  },
  {
    slug: 'broken-ground',
    title: 'A ground lead that breaks',
    sees: 'For moments the trace leaps up, to nearly the supply’s voltage, and comes back.',
    means: 'The ground lead opens: without it the signal rises to what feeds the track.',
    proof:
      'Measure from the sensor’s ground pin to the supply’s negative post while you flex the lead: it must stay near 0 V.',
    verdict: 'fail',
  },
  {
    slug: 'interference',
    title: 'Interference',
    sees: 'Short spikes both up and down, anywhere, also at rest, beyond what the track can give.',
    means: 'A foreign voltage: ignition, a motor, a loose screen, or the recorder’s own lead.',
    proof:
      'It stays when the throttle rests, and goes with the engine, the charger or the lamp that makes it.',
    verdict: 'marginal',
  },
  {
    slug: 'slipped-rotor',
    title: 'A slipped rotor',
    sees: 'Smooth ramps, but from one moment on every level is shifted.',
    means: 'The wiper’s carrier has slipped on the shaft, or the sensor in its slots.',
    proof: 'Closed and open readings are off by the same amount, and readjusting does not last.',
    verdict: 'fail',
  },
  {
    slug: 'sticky-return',
    title: 'A sticky return',
    sees: 'Each time it is let go the trace settles at another closed level.',
    means:
      'Shaft, spring or linkage stick, or the sensor sits loose: the closed position does not come back.',
    proof: 'Press the plate shut with a finger: the reading falls to the right one.',
    verdict: 'fail',
  },
  {
    slug: 'clipped',
    title: 'A clipped recording',
    sees: 'The top of every ramp is cut off in a flat line below the open reading.',
    means: 'The recorder’s range ends there. Nothing is known of the sensor above it.',
    proof: 'Choose the next larger range and record again.',
    verdict: 'inconclusive',
  },
  {
    slug: 'too-slow',
    title: 'A recorder that is too slow',
    sees: 'Ramps of a few dots with straight lines between them.',
    means:
      'A worn place lasts milliseconds; between two dots it passes unseen. A clean trace proves nothing here.',
    proof: 'Record at 1000 samples a second or more; a scope’s slow sweep or a logger does it.',
    verdict: 'inconclusive',
  },
  {
    slug: 'meter-digits',
    title: 'What a meter’s digits show of a dropout',
    sees: 'The same worn sensor as above, read off a meter three times a second: steps, and no needle.',
    means:
      'The meter averages and shows what was. It is right for the readings at the stops and blind on the sweep.',
    proof: 'Watch the sweep with a scope or logger; keep the meter for closed and open.',
    verdict: 'inconclusive',
  },
];
