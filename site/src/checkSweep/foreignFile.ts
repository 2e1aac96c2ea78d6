import type { ForeignKind } from '@truesweep/wording';

/** How files that hold no recording begin, and what they are. */
const beginnings: readonly (readonly [beginning: string, kind: ForeignKind])[] = [
  ['%PDF', 'document'],
  ['\x89PNG', 'picture'],
  ['\xff\xd8\xff', 'picture'],
  ['GIF8', 'picture'],
  ['BM', 'picture'],
  ['PK\x03\x04', 'packed'],
  ['\x1f\x8b', 'packed'],
  ['7z\xbc\xaf', 'packed'],
  ['Rar!', 'packed'],
  ['\xd0\xcf\x11\xe0', 'spreadsheet'],
  ['ID3', 'compressed-sound'],
  ['OggS', 'compressed-sound'],
  ['fLaC', 'compressed-sound'],
];

/** What a file is that holds no recording, by how it begins; undefined where it may hold one. */
export function foreignFile(name: string, bytes: Uint8Array): ForeignKind | undefined {
  if (bytes.length === 0) return 'empty';
  const head = String.fromCharCode(...bytes.subarray(0, 12));
  const kind = beginnings.find(([beginning]) => head.startsWith(beginning))?.[1];
  if (kind === 'packed' && /\.(xlsx|xlsm|ods)$/i.test(name)) return 'spreadsheet';
  if (kind === 'packed' && /\.(docx|odt)$/i.test(name)) return 'document';
  if (kind === undefined && head.slice(4, 8) === 'ftyp') return 'film';
  // Two letters alone may begin a text as well.
  if (head.startsWith('BM') && bytes.subarray(0, 64).every((one) => one >= 9 && one < 127))
    return undefined;
  return kind;
}
