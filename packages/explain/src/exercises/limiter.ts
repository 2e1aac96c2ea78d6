import { type Circuit, type Ohms, preferredValue, type Ratings } from '@truesweep/core';
import {
  circuitWorkingWords,
  workingRules as rules,
  limiterExerciseWords as words,
} from '@truesweep/wording/working';
import { call, difference, quotient, root } from '../expression.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';
import { given, sourceVolts } from './benchParts.js';
import type { Draws } from './draws.js';
import type { Draft, ExerciseLevel } from './exercise.js';
import { choicePart, quantityPart } from './parts.js';

/** What the smallest limiter is asked for: the hook-up without one, and what its parts may bear. */
interface Asked {
  readonly circuit: Circuit;
  readonly ratings: Ratings;
}

/** The smallest limiting resistor that keeps the wiper’s rating, the track’s, or both with what is inside the source, when a lead sits wrongly. */
export function limiter(draw: Draws, level: ExerciseLevel): Draft | undefined {
  const asked = drawn(draw, level);
  const { volts, ohms: inside = 0 } = asked.circuit.source;
  const { track } = asked.circuit.sensor;
  const { wiper, track: rated } = asked.ratings;
  const forWiper = (amps: number): Ohms => volts / amps;
  const forTrack = (watts: number): Ohms => volts * Math.sqrt(track / watts);
  const wiperOhms = wiper ? forWiper(wiper.shortTerm!) : 0;
  const trackOhms = rated ? forTrack(rated.shortTerm!) : 0;
  const border = Math.max(wiperOhms, trackOhms);
  const smallest = border - inside;
  // Normal use must not be what decides: only the wrong connection is asked about.
  const normal = (volts / (border + track)) ** 2 * track;
  if (smallest < 20 || (rated && normal > rated.watts)) return undefined;
  return {
    question: words.question({
      source: given(volts, 'V'),
      ...(inside > 0 && { inside: given(inside, 'Ω') }),
      track: given(track, 'Ω'),
      ...(wiper && { wiper: [given(wiper.amps, 'A'), given(wiper.shortTerm!, 'A')] as const }),
      ...(rated && { rated: [given(rated.watts, 'W'), given(rated.shortTerm!, 'W')] as const }),
    }),
    hint: words.hint,
    parts: [
      quantityPart({ id: 'smallest', asks: words.asks, unit: 'Ω', value: smallest }, [
        ...(inside > 0
          ? ([
              [border, words.mistakes.forgotInside],
              [border + inside, words.mistakes.addedInside],
              [Math.min(wiperOhms, trackOhms) - inside, words.mistakes.smaller],
            ] as const)
          : []),
        ...(wiper ? ([[forWiper(wiper.amps) - inside, words.mistakes.continuous]] as const) : []),
        ...(rated
          ? ([
              [forTrack(rated.watts) - inside, words.mistakes.continuous],
              [volts ** 2 / rated.shortTerm! - inside, words.mistakes.powerOfLimiter],
            ] as const)
          : []),
        [smallest - track, words.mistakes.countedTrack],
        [track, words.mistakes.trackForLimiter],
      ]),
      preferredPart(smallest),
    ],
    working: () => working(asked, smallest),
  };
}

function drawn(draw: Draws, level: ExerciseLevel): Asked {
  const circuit: Circuit = {
    source: {
      volts: draw.one(sourceVolts),
      ...(level === 'hard' && { ohms: draw.ohms('E12', 100, 220) }),
    },
    limiter: 0,
    sensor: { track: draw.ohms('E12', 1000, 10_000) },
    load: {},
  };
  const amps = draw.one([0.5e-3, 1e-3, 2e-3]);
  const watts = draw.one([0.05, 0.1, 0.2, 0.25]);
  return {
    circuit,
    ratings: {
      ...(level !== 'medium' && {
        wiper: { amps, shortTerm: amps * draw.one([4, 5, 8, 10]) },
      }),
      ...(level !== 'easy' && { track: { watts, shortTerm: watts * draw.one([2, 3, 4, 5]) } }),
    },
  };
}

/** Which value of E24 is taken: the next one up, among its neighbours. */
function preferredPart(smallest: Ohms) {
  const up = preferredValue(smallest, 'E24', 'up');
  const down = preferredValue(up * 0.97, 'E24', 'down');
  const [above, below] = [
    preferredValue(up * 1.03, 'E24', 'up'),
    preferredValue(down * 0.97, 'E24', 'down'),
  ];
  const option = (ohms: Ohms, mistake: string) => ({
    id: String(ohms),
    text: given(ohms, 'Ω'),
    mistake,
  });
  return choicePart({ id: 'preferred', asks: words.asksPreferred, right: String(up) }, [
    option(below, words.mistakes.tooSmall),
    option(down, words.mistakes.tooSmall),
    option(up, ''),
    option(above, words.mistakes.needlesslyLarge),
  ]);
}

function working({ circuit, ratings }: Asked, smallest: Ohms): Working {
  return workOut(words.title, ({ give, find }) => {
    const { source, sensor } = circuit;
    give({ symbol: 'E', meaning: circuitWorkingWords.given.E, value: source.volts, unit: 'V' });
    if (source.ohms)
      give({
        symbol: 'R_i',
        meaning: circuitWorkingWords.given.R_i,
        value: source.ohms,
        unit: 'Ω',
      });
    const ways: string[] = [];
    const way = (symbol: 'R_wip' | 'R_trk', current: string): void => {
      const formula = quotient('E', current);
      find({ symbol, meaning: words.finds[symbol], unit: 'Ω', formula, rule: rules.ohm });
      ways.push(symbol);
    };
    if (ratings.wiper) {
      give({
        symbol: 'I_wip',
        meaning: words.finds.I_wip,
        value: ratings.wiper.shortTerm!,
        unit: 'A',
      });
      way('R_wip', 'I_wip');
    }
    if (ratings.track) {
      give({
        symbol: 'R_t',
        meaning: circuitWorkingWords.given.R_t,
        value: sensor.track,
        unit: 'Ω',
      });
      give({ symbol: 'P_t', meaning: words.finds.P_t, value: ratings.track.shortTerm!, unit: 'W' });
      const formula = root(quotient('P_t', 'R_t'));
      find({ symbol: 'I_trk', meaning: words.finds.I_trk, unit: 'A', formula, rule: rules.joule });
      way('R_trk', 'I_trk');
    }
    if (source.ohms) {
      find({
        symbol: 'R_s',
        meaning: words.finds.R_s,
        unit: 'Ω',
        formula: difference(call('max', ...ways), 'R_i'),
        rule: rules.series,
      });
    }
    return { conclusion: words.conclusion(given(preferredValue(smallest, 'E24', 'up'), 'Ω')) };
  });
}
