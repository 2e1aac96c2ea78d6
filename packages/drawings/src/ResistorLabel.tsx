import type { PlacedResistor } from './circuitLayout.js';
import { partName } from './partName.js';
import { resistanceText } from './resistanceText.js';
import { Words } from './Words.js';

/** Name and value of a resistor: beside it where it stands upright, above and below where it lies. */
export function ResistorLabel({ part, ohms, upright, label }: PlacedResistor) {
  const { x, y, anchor } = label;
  return (
    <>
      <Words x={x} y={upright ? y - 4 : y - 13} anchor={anchor} bold>
        {partName(part)}
      </Words>
      <Words x={x} y={upright ? y + 13 : y + 24} anchor={anchor}>
        {resistanceText(ohms)}
      </Words>
    </>
  );
}
