/** Rows of cells as lines of equal columns, two spaces apart; numbers stand to the right. */
export function alignColumns(
  rows: readonly (readonly string[])[],
  sides: readonly ('left' | 'right')[],
): readonly string[] {
  const widths = sides.map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  return rows.map((row) =>
    row
      .map((cell, i) =>
        sides[i] === 'right' ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0),
      )
      .join('  ')
      .trimEnd(),
  );
}
