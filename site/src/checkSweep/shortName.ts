/** Longer names are shown without their middle: what stands after one would be pushed out of sight. */
const longest = 60;
const endKept = 16;

/** A file's name as it is shown; the report and the job keep it whole. */
export function shortName(name: string): string {
  if (name.length <= longest) return name;
  return `${name.slice(0, longest - endKept)}…${name.slice(-endKept)}`;
}
