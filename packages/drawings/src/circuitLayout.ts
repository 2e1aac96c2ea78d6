import { type Circuit, type Ohms, type PartName, positionAt } from '@truesweep/core';
import { spreadApart } from './spreadApart.js';

/** A point of a drawing, in the units of its view box. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A resistor of the drawing: its middle, which way it lies, and where its name begins or ends. */
export interface PlacedResistor extends Point {
  readonly part: PartName | 'track';
  readonly ohms: Ohms;
  readonly upright: boolean;
  readonly length: number;
  readonly label: Point & { readonly anchor: 'start' | 'middle' | 'end' };
}

/** An arrow for a current: its tip, the way it points, and where its number stands. */
export interface PlacedArrow extends Point {
  readonly part: PartName;
  readonly toward: 'right' | 'down';
  readonly label: Point;
}

/** A stop of the throttle: where the wiper stands then, and where that is written. */
interface PlacedStop {
  readonly stop: 'closed' | 'open';
  readonly position: number;
  readonly y: number;
  readonly labelY: number;
}

/** Where everything of a circuit's drawing lies. */
export interface CircuitLayout {
  readonly width: number;
  /** Down to the common rail; what is written below is not counted. */
  readonly height: number;
  readonly source: Point;
  readonly instrument: Point;
  /** The dashed outline of the sensor. */
  readonly sensor: { readonly x: number; readonly y: number; width: number; height: number };
  readonly resistors: readonly PlacedResistor[];
  /** Each a path of straight pieces. */
  readonly wires: readonly (readonly Point[])[];
  readonly terminals: readonly Point[];
  readonly joints: readonly Point[];
  /** Where the wiper's arrow touches the track. */
  readonly wiper: Point;
  readonly stops: readonly PlacedStop[];
  readonly arrows: readonly PlacedArrow[];
  /** Where the pull-up's own voltage is fed in. */
  readonly pullUpFeed?: Point;
}

/** Columns of the drawing, and heights of what stands in them. */
const width = 384;
const columns = { source: 34, spine: 122, wiper: 230, load: 304, instrument: 356 };
const railTop = 30;
const slot = 58;
const trackLength = 150;
const lead = 22;
const bodyLength = 40;
const terminalSize = 8;

/** A part without resistance is drawn as plain wire. */
function isDrawn(ohms: Ohms | undefined): ohms is Ohms {
  return ohms !== undefined && ohms !== 0;
}

/** Stacks the given parts down the spine from `top`, one slot each; 0 Ω takes no slot. */
function stack(top: number, parts: readonly (readonly [PartName, Ohms | undefined])[]) {
  const drawn = parts.filter((part): part is readonly [PartName, Ohms] => isDrawn(part[1]));
  const resistors = drawn.map(
    ([part, ohms], i): PlacedResistor => ({
      part,
      ohms,
      upright: true,
      length: bodyLength,
      x: columns.spine,
      y: top + slot * (i + 0.5),
      label: { x: columns.spine + 18, y: top + slot * (i + 0.5), anchor: 'start' },
    }),
  );
  return { resistors, bottom: top + slot * drawn.length };
}

/** The straight pieces of a wire that runs down a column from `top` to `bottom` between the parts in it. */
function wiresBetween(
  x: number,
  top: number,
  bottom: number,
  parts: readonly { readonly y: number; readonly length: number }[],
): Point[][] {
  const edges = parts.flatMap(({ y, length }) => [y - length / 2, y + length / 2]);
  const ends = [top, ...edges, bottom];
  return Array.from({ length: ends.length / 2 }, (_, i) => [
    { x, y: ends[2 * i] ?? top },
    { x, y: ends[2 * i + 1] ?? bottom },
  ]);
}

/**
 * Places the parts of a bench circuit: the source on the left, the limiting resistor and the sensor
 * down the middle, the load and the instrument on the right. Parts of 0 Ω are wire.
 *
 * @param circuit The circuit, in SI units.
 */
export function circuitLayout(circuit: Circuit): CircuitLayout {
  const { leads = {}, sensor, load } = circuit;
  const above = stack(railTop + 4, [
    ['limiter', circuit.limiter],
    ['supplyLead', leads.supply],
  ]);
  // Without any part above, the sensor still stays below the source.
  const top: Point = {
    x: columns.spine,
    y: Math.max(above.bottom, railTop + 4 + slot) + lead,
  };
  const upper = stack(top.y + 8, [['topResidual', sensor.topResidual]]);
  const trackTop = upper.bottom + 14;
  const trackBottom = trackTop + trackLength;
  const lower = stack(trackBottom + 14, [['bottomResidual', sensor.bottomResidual]]);
  const bottom: Point = { x: columns.spine, y: lower.bottom + 8 };
  const below = stack(bottom.y + lead + 6, [['groundLead', leads.ground]]);
  const height = below.bottom + 10;
  const at = (position: number) => trackBottom - position * trackLength;

  const wiper: Point = { x: columns.spine + 8, y: at(positionAt(sensor, 0.5)) };
  const track: PlacedResistor = {
    part: 'track',
    ohms: sensor.track,
    upright: true,
    length: trackLength,
    x: columns.spine,
    y: (trackTop + trackBottom) / 2,
    label: { x: columns.spine - 16, y: (trackTop + trackBottom) / 2, anchor: 'end' },
  };
  const inSensor = [...upper.resistors, track, ...lower.resistors];
  const spine = [
    ...above.resistors,
    { ...top, length: terminalSize },
    ...inSensor,
    { ...bottom, length: terminalSize },
    ...below.resistors,
  ];
  const side = loadColumn(circuit, wiper.y, height);
  const across = wiperWire(circuit, wiper);
  const source: Point = { x: columns.source, y: railTop + 62 };

  return {
    width,
    height,
    source,
    instrument: { x: columns.instrument, y: (wiper.y + height) / 2 },
    sensor: { x: 54, y: top.y, width: columns.wiper - 54, height: bottom.y - top.y },
    resistors: [
      ...above.resistors,
      ...inSensor,
      ...below.resistors,
      ...across.resistors,
      ...side.resistors,
    ],
    wires: [
      [
        { x: columns.source, y: source.y - 18 },
        { x: columns.source, y: railTop },
        { x: columns.spine, y: railTop },
      ],
      [
        { x: columns.source, y: source.y + 18 },
        { x: columns.source, y: height },
        { x: columns.instrument, y: height },
      ],
      ...wiresBetween(columns.spine, railTop, height, spine),
      ...across.wires,
      ...side.wires,
    ],
    terminals: [top, bottom, { x: columns.wiper, y: wiper.y }],
    joints: [{ x: columns.spine, y: height }, ...side.joints],
    wiper,
    stops: stopsOf(circuit, wiper.y, at),
    arrows: [
      {
        part: 'limiter',
        x: 84,
        y: railTop,
        toward: 'right',
        label: { x: 78, y: railTop - 8 },
      },
      {
        part: 'trackBelow',
        x: columns.spine,
        y: bottom.y + 20,
        toward: 'down',
        label: { x: columns.spine - 18, y: bottom.y + 20 },
      },
      {
        part: 'contact',
        x: columns.wiper - 12,
        y: wiper.y,
        toward: 'right',
        label: { x: columns.wiper - 22, y: wiper.y - 9 },
      },
      ...side.arrows,
    ],
    ...(load.pullUp && { pullUpFeed: { x: columns.load, y: wiper.y - 92 } }),
  };
}

/** From the wiper's arrow to the load: the contact inside the sensor, the signal lead outside. */
function wiperWire({ sensor, leads }: Circuit, wiper: Point) {
  const place = (part: PartName, ohms: Ohms, x: number): PlacedResistor => ({
    part,
    ohms,
    upright: false,
    length: bodyLength,
    x,
    y: wiper.y,
    label: { x, y: wiper.y, anchor: 'middle' },
  });
  const resistors: PlacedResistor[] = [];
  if (isDrawn(sensor.contact)) resistors.push(place('contact', sensor.contact, wiper.x + 48));
  if (isDrawn(leads?.signal)) resistors.push(place('signalLead', leads.signal, columns.wiper + 34));
  const edges = [...resistors, { x: columns.wiper, length: terminalSize }]
    .sort((a, b) => a.x - b.x)
    .flatMap(({ x, length }) => [x - length / 2, x + length / 2]);
  const ends = [wiper.x, ...edges, columns.instrument];
  const wires = Array.from({ length: ends.length / 2 }, (_, i) => [
    { x: ends[2 * i] ?? 0, y: wiper.y },
    { x: ends[2 * i + 1] ?? 0, y: wiper.y },
  ]);
  return { resistors, wires };
}

/** What hangs on the signal: a pull-up above the wire, a pull-down and the instrument below it. */
function loadColumn({ load }: Circuit, signalY: number, railBottom: number) {
  const x = columns.load;
  const middle = (signalY + railBottom) / 2;
  const upright = (part: PartName, ohms: Ohms, y: number): PlacedResistor => ({
    part,
    ohms,
    upright: true,
    length: bodyLength,
    x,
    y,
    label: { x: x - 14, y, anchor: 'end' },
  });
  const resistors: PlacedResistor[] = [];
  const wires: Point[][] = [
    [
      { x: columns.instrument, y: signalY },
      { x: columns.instrument, y: middle - 16 },
    ],
    [
      { x: columns.instrument, y: middle + 16 },
      { x: columns.instrument, y: railBottom },
    ],
  ];
  const joints: Point[] = [];
  const arrows: PlacedArrow[] = [];
  const { pullDown, pullUp } = load;
  if (pullDown !== undefined && pullDown !== Number.POSITIVE_INFINITY) {
    const part = upright('pullDown', pullDown, middle);
    if (pullDown !== 0) resistors.push(part);
    wires.push(...wiresBetween(x, signalY, railBottom, pullDown === 0 ? [] : [part]));
    joints.push({ x, y: railBottom });
    if (pullUp) arrows.push(arrowDown('pullDown', x, middle + 34));
  }
  if (pullUp) {
    const part = upright('pullUp', pullUp.ohms, signalY - 56);
    if (isDrawn(pullUp.ohms)) resistors.push(part);
    wires.push(...wiresBetween(x, signalY - 92, signalY, isDrawn(pullUp.ohms) ? [part] : []));
    arrows.push(arrowDown('pullUp', x, signalY - 14));
  }
  if (joints.length > 0 || pullUp) joints.push({ x, y: signalY });
  return { resistors, wires, joints, arrows };
}

function arrowDown(part: PartName, x: number, y: number): PlacedArrow {
  return { part, x, y, toward: 'down', label: { x: x + 8, y: y - 2 } };
}

/** The wiper's two stops; their words keep clear of each other and of the wiper's wire. */
function stopsOf(
  { sensor }: Circuit,
  wireY: number,
  at: (position: number) => number,
): readonly PlacedStop[] {
  // The current's mark stands above the wire, the contact's name and value about it.
  const clear = isDrawn(sensor.contact) ? 36 : 26;
  const stops = (['closed', 'open'] as const).map((stop) => {
    const position = positionAt(sensor, stop === 'closed' ? 0 : 1);
    return { stop, position, y: at(position) };
  });
  const [first = wireY, second = wireY] = spreadApart(
    stops.map(({ y }) => y),
    wireY,
    clear,
  );
  return stops.map((one, i) => ({ ...one, labelY: i === 0 ? first : second }));
}
