// Two tracks of one housing. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { compareTracks, type TracksEvidence } from './tracks/compareTracks.js';
export type {
  Disagreement,
  Liar,
  NotCompared,
  TrackRelation,
  TracksComparison,
  TwoTracks,
  TwoTracksLike,
} from './tracks/twoTracks.js';
