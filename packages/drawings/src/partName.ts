import { drawingWords, partLabels } from '@truesweep/wording';
import type { PlacedResistor } from './circuitLayout.js';

/** What a part is called beside its symbol, where there is little room. */
export function partName(part: PlacedResistor['part']): string {
  if (part === 'track') return drawingWords.track;
  if (part === 'topResidual' || part === 'bottomResidual') return drawingWords.endResidual;
  if (part === 'contact') return drawingWords.contact;
  if (part === 'pullDown') return drawingWords.load;
  return partLabels[part];
}
