/** Both neighbours of a lone outlier bend back by this part of it at the least. */
const leastBack = 0.25;

/**
 * A slow recording with each sample that stands out alone put on the line between its neighbours: the one that bends
 * the recording more than either neighbour and against both. A median of three would put its neighbours off as well.
 */
export function withoutLoneOutliers(time: Float64Array, values: Float64Array): Float64Array {
  const between = (i: number): number => {
    const part = (time[i]! - time[i - 1]!) / (time[i + 1]! - time[i - 1]!);
    return values[i - 1]! + (values[i + 1]! - values[i - 1]!) * part;
  };
  const bend = (i: number): number =>
    i > 0 && i < values.length - 1 && time[i + 1]! > time[i - 1]! ? values[i]! - between(i) : 0;
  const path = Float64Array.from(values);
  let [before, here] = [0, bend(1)];
  for (let i = 1; i < values.length - 1; i++) {
    const after = bend(i + 1);
    const size = Math.abs(here);
    // Neighbours bend by half as much the other way; movement and noise may take half of that.
    const back = -Math.sign(here) * size * leastBack;
    const isLone =
      here < 0 ? before >= back && after >= back : here > 0 && before <= back && after <= back;
    if (isLone && size > Math.abs(before) && size >= Math.abs(after)) path[i] = between(i);
    [before, here] = [here, after];
  }
  return path;
}
