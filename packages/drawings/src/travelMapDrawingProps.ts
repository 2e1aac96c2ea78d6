import type { Score } from '@truesweep/core';

/** What `TravelMapDrawing` and `travelMapSvg` draw. */
export interface TravelMapDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The score that is drawn, or these parts of it. */
  readonly score: Pick<Score, 'strokes' | 'findings' | 'spots' | 'coverage'>;
  /** The drawing's width, 240 to 4000; 760 when left out. */
  readonly width?: number | undefined;
}
