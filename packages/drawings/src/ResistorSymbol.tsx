import type { PlacedResistor } from './circuitLayout.js';

const thickness = 14;

/** A resistor's rectangle (as in IEC 60617); where it is broken, a gap between two stubs. */
export function ResistorSymbol({ x, y, upright, length, ohms, part }: PlacedResistor) {
  if (ohms === Number.POSITIVE_INFINITY && part !== 'track') {
    const stub = length / 3;
    const d = upright
      ? `M${x},${y - length / 2}v${stub}M${x},${y + length / 2}v${-stub}`
      : `M${x - length / 2},${y}h${stub}M${x + length / 2},${y}h${-stub}`;
    return <path class={`part ${part} broken`} d={d} />;
  }
  const wide = upright ? thickness : length;
  const high = upright ? length : thickness;
  return (
    <rect class={`part ${part}`} x={x - wide / 2} y={y - high / 2} width={wide} height={high} />
  );
}
