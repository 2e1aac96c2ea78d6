/** Which readings stand at the lowest and at the highest place of the shaft; the first of equals. */
export function endReadings(shaft: Float64Array): readonly [lowest: number, highest: number] {
  let [lowest, highest] = [0, 0];
  for (let i = 1; i < shaft.length; i++) {
    if (shaft[i]! < shaft[lowest]!) lowest = i;
    if (shaft[i]! > shaft[highest]!) highest = i;
  }
  return [lowest, highest];
}
