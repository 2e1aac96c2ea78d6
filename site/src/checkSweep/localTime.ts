/** A moment as this place's clock shows it: ISO 8601 without seconds and zone, with a space. */
export function localTime(at: Date): string {
  const two = (number: number) => String(number).padStart(2, '0');
  const day = [at.getFullYear(), two(at.getMonth() + 1), two(at.getDate())].join('-');
  return `${day} ${two(at.getHours())}:${two(at.getMinutes())}`;
}
