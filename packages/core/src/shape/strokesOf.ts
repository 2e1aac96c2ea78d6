/** A stretch of readings over which the shaft went one way, from one turning point to before the next. */
export interface ShaftStroke {
  readonly from: number;
  readonly to: number;
  /** Whether the shaft's place grew. */
  readonly opening: boolean;
}

/** Parts readings where the shaft turned back by more than a given way; none where it never moved that far. */
export function strokesOf(shaft: Float64Array, turn: number): readonly ShaftStroke[] {
  const strokes: ShaftStroke[] = [];
  let [low, high, from] = [0, 0, 0];
  let opening: boolean | undefined;
  for (let i = 0; i < shaft.length; i++) {
    const at = shaft[i]!;
    if (at <= shaft[low]!) low = i;
    if (at >= shaft[high]!) high = i;
    const turned = opening === undefined ? at !== shaft[low]! : !opening;
    const away = turned ? at - shaft[low]! : shaft[high]! - at;
    if (!(away > turn)) continue;
    const extreme = turned ? low : high;
    if (opening !== undefined) strokes.push({ from, to: extreme, opening });
    from = opening === undefined ? 0 : extreme;
    opening = turned;
    low = high = i;
  }
  if (opening !== undefined) strokes.push({ from, to: shaft.length, opening });
  return strokes;
}
