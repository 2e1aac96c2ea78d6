/** The two neighbouring rows of a table between which a place lies; the first two below it, the first that is not below it decides. */
export function rowsAround<Row>(
  rows: readonly Row[],
  isNotBelow: (row: Row) => boolean,
): readonly [Row, Row] {
  const next = Math.max(1, rows.findIndex(isNotBelow));
  return [rows[next - 1]!, rows[next]!];
}
