import type { Circuit, Position, Tolerances, Volts } from '@truesweep/core';
import { expectedWindows } from '@truesweep/core';
import { circuitWorkingWords, windowExerciseWords as words } from '@truesweep/wording/working';
import { findLegs, unmarked } from '../circuit/legs.js';
import { findOutput } from '../circuit/output.js';
import { outputAt } from '../circuit/outputAt.js';
import { difference, product, sum } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { given, sourceVolts } from './benchParts.js';
import type { Draws } from './draws.js';
import type { Draft, ExerciseLevel } from './exercise.js';
import { quantityPart } from './parts.js';

/** Which end of which window is asked for, of which hook-up. */
interface Asked {
  readonly circuit: Circuit;
  readonly tolerances: Tolerances;
  readonly stop: 'closed' | 'open';
  readonly end: 'low' | 'high';
}

/** Each part's way to the end of its tolerance, 1 up and −1 down, 0 for its nominal value. */
type Ways = Readonly<Record<'source' | 'limiter' | 'track' | 'load' | 'place', number>>;

/** An end of the closed or open window: of the source and the stop alone, behind a limiter, or with a load as well. */
export function windows(draw: Draws, level: ExerciseLevel): Draft | undefined {
  const asked = drawn(draw, level);
  const { circuit, tolerances, stop, end } = asked;
  const window = expectedWindows(circuit, tolerances)[stop];
  const value = window[end];
  const ways = waysTo(asked, value);
  if (!ways) return undefined;
  const at = (changed: Partial<Ways>, of: Circuit = circuit) =>
    readingAt({ ...asked, circuit: of }, { ...ways, ...changed });
  const place = placeOf(asked);
  const reach = reachOf(asked);
  const allAdded =
    1 +
    ways.source * ((tolerances.source ?? 0) + (tolerances.limiter ?? 0) + (tolerances.track ?? 0));
  return {
    question: words.question({
      source: around(circuit.source.volts, 'V', tolerances.source),
      ...(circuit.limiter > 0 && { limiter: around(circuit.limiter, 'Ω', tolerances.limiter) }),
      track: around(circuit.sensor.track, 'Ω', tolerances.track),
      ...(circuit.load.pullDown && {
        load: around(circuit.load.pullDown, 'Ω', tolerances.pullDown),
      }),
      stop: words.stops[stop],
      place: given(place, '%'),
      reach: given(reach, '%'),
    }),
    hint: level === 'easy' ? words.hint : words.hintWithLimiter,
    parts: [
      quantityPart(
        { id: end, asks: words.asks(words.ends[end], words.stops[stop]), unit: 'V', value },
        [
          [at(nominal), words.mistakes.nominal],
          [at({ source: 0 }), words.mistakes.forgotSource],
          [at({ place: 0 }), words.mistakes.forgotPlace],
          [readingAt(asked, ways, place * (1 + ways.place * reach)), words.mistakes.ofPlace],
          [at({}, { ...circuit, limiter: 0 }), words.mistakes.forgotLimiter],
          [at({}, { ...circuit, load: {} }), words.mistakes.forgotLoad],
          [at({ limiter: -ways.limiter }), words.mistakes.wrongWay],
          [at({ track: 0, limiter: 0, load: 0 }), words.mistakes.forgotResistances],
          [at({ ...nominal, place: ways.place }) * allAdded, words.mistakes.addedUp],
          [window[end === 'low' ? 'high' : 'low'], words.mistakes.otherEnd],
        ],
      ),
    ],
    working: () => working(asked, ways),
  };
}

const nominal: Ways = { source: 0, limiter: 0, track: 0, load: 0, place: 0 };

function drawn(draw: Draws, level: ExerciseLevel): Asked {
  const isEasy = level === 'easy';
  const isHard = level === 'hard';
  const [stop, end] = [draw.one(['closed', 'open'] as const), draw.one(['low', 'high'] as const)];
  return {
    circuit: {
      source: { volts: isEasy ? sourceVolts[0]! : draw.one(sourceVolts) },
      limiter: isEasy ? 0 : draw.ohms('E12', 470, 2700),
      sensor: {
        track: draw.ohms('E12', 2200, 10_000),
        closedPosition: draw.stepped(0.08, 0.15, 0.01),
        openPosition: draw.stepped(0.8, 0.92, 0.01),
      },
      load: isHard ? { pullDown: draw.ohms('E12', 10_000, 47_000) } : {},
    },
    tolerances: {
      source: draw.stepped(0.02, 0.05, 0.01),
      [`${stop}Position`]: draw.stepped(0.02, 0.04, 0.01),
      ...(!isEasy && { limiter: draw.one([0.05, 0.1]), track: draw.one([0.1, 0.2]) }),
      ...(isHard && { pullDown: draw.one([0.05, 0.1]) }),
    },
    stop,
    end,
  };
}

/** A value with its tolerance, as it stands in a question; without one as it is. */
const around = (value: number, unit: WorkingUnit, tolerance = 0): string =>
  tolerance > 0 ? words.around(given(value, unit), given(tolerance, '%')) : given(value, unit);

const placeOf = ({ circuit, stop }: Asked): Position => circuit.sensor[`${stop}Position`]!;

const reachOf = ({ tolerances, stop }: Asked): Position => tolerances[`${stop}Position`]!;

/** Which way each part goes at that end; none where the end lies between the corners. */
function waysTo(asked: Asked, value: Volts): Ways | undefined {
  const sign = asked.end === 'high' ? 1 : -1;
  return [sign, -sign]
    .map((track) => ({ source: sign, limiter: -sign, track, load: sign, place: sign }))
    .find((ways) => Math.abs(readingAt(asked, ways) / value - 1) < 1e-12);
}

/** The reading with each part at an end of its tolerance; the wiper where the ways put it, when no other place is given. */
function readingAt(
  asked: Asked,
  ways: Ways,
  position = placeOf(asked) + ways.place * reachOf(asked),
): Volts {
  const { circuit, tolerances } = asked;
  const { source, limiter, sensor, load } = circuit;
  const off = (way: keyof Ways, tolerance = 0) => 1 + ways[way] * tolerance;
  const pullDown = load.pullDown && load.pullDown * off('load', tolerances.pullDown);
  const at: Circuit = {
    source: { volts: source.volts * off('source', tolerances.source) },
    limiter: limiter * off('limiter', tolerances.limiter),
    sensor: { track: sensor.track * off('track', tolerances.track) },
    load: pullDown ? { pullDown } : {},
  };
  return outputAt(at, position);
}

/** Each part at the end of its tolerance, and the reading there. */
function working(asked: Asked, ways: Ways): Working {
  const { circuit, tolerances, stop, end } = asked;
  return workOut(words.title(words.ends[end], words.stops[stop]), (sheet) => {
    const off = offOn(sheet);
    const source = off('E', 'V', circuit.source.volts, ways.source, tolerances.source)!;
    const limiter = off('R_s', 'Ω', circuit.limiter, ways.limiter, tolerances.limiter);
    const track = off('R_t', 'Ω', circuit.sensor.track, ways.track, tolerances.track)!;
    const pullDown = off('R_L', 'Ω', circuit.load.pullDown, ways.load, tolerances.pullDown);
    sheet.give({ symbol: 'x', meaning: words.finds.x, value: placeOf(asked), unit: '%' });
    sheet.give({ symbol: 'd_x', meaning: words.finds.d_x, value: reachOf(asked), unit: '%' });
    sheet.find({
      symbol: 'x_e',
      meaning: words.finds.x_e,
      unit: '%',
      formula: ways.place > 0 ? sum('x', 'd_x') : difference('x', 'd_x'),
      rule: words.rules.corner,
    });
    const above = limiter === undefined ? [] : [limiter];
    const parts = { source, above, track, below: [], signal: [], ...(pullDown && { pullDown }) };
    findOutput(sheet, findLegs(sheet, parts, 'x_e', unmarked), 'thevenin', unmarked);
    return {};
  });
}

/** Writes a part with its tolerance onto a sheet and works out its end; says the symbol to go on with, none where there is no such part. */
function offOn({ give, find }: Sheet) {
  return (
    symbol: 'E' | 'R_s' | 'R_t' | 'R_L',
    unit: WorkingUnit,
    value: number | undefined,
    way: number,
    tolerance = 0,
  ): string | undefined => {
    if (!value) return undefined;
    give({ symbol, meaning: circuitWorkingWords.given[symbol], value, unit });
    if (tolerance === 0) return symbol;
    const name = symbol.replace('R_', '');
    const [off, ended] = [`d_${name}`, symbol.includes('_') ? `${symbol},e` : `${symbol}_e`];
    give({
      symbol: off,
      meaning: words.toleranceOf(circuitWorkingWords.given[symbol]),
      value: tolerance,
      unit: '%',
    });
    find({
      symbol: ended,
      meaning: words.endOf(circuitWorkingWords.given[symbol]),
      unit,
      formula: product(symbol, way > 0 ? sum(1, off) : difference(1, off)),
      rule: words.rules.corner,
    });
    return ended;
  };
}
