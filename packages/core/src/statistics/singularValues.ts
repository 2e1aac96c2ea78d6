/** A matrix taken apart: matrix = left · diag(values) · rightᵀ. */
export interface SingularValues {
  /** Orthonormal columns as long as the matrix has rows, one for each value; of noise where the value is 0. */
  readonly left: readonly (readonly number[])[];
  /** One for each column of the matrix, in no order. */
  readonly values: readonly number[];
  /** Orthonormal columns as long as the matrix has columns, one for each value. */
  readonly right: readonly (readonly number[])[];
}

/**
 * The singular values of a small matrix, small ones as exact as large ones.
 *
 * Method: its columns are turned pair by pair until all are at right angles (M. R. Hestenes' one-sided Jacobi
 * method, 1958; from memory).
 *
 * @param columns The matrix, column by column, all of one length.
 */
export function singularValues(columns: readonly (readonly number[])[]): SingularValues {
  const turned = columns.map((column) => [...column]);
  const right = columns.map((_, i) => columns.map((__, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < 60 && turnAllPairs(turned, right); sweep++);
  const values = turned.map((column) => Math.hypot(...column));
  const left = turned.map((column, j) =>
    column.map((at) => (values[j]! > 0 ? at / values[j]! : 0)),
  );
  return { left, values, right };
}

/** Turns each pair of columns to a right angle; tells whether any was not at one. */
function turnAllPairs(turned: number[][], right: number[][]): boolean {
  let moved = false;
  for (let i = 0; i < turned.length; i++) {
    for (let j = i + 1; j < turned.length; j++) {
      const [one, other] = [turned[i]!, turned[j]!];
      const [a, b, c] = [dot(one, one), dot(other, other), dot(one, other)];
      if (Math.abs(c) <= Number.EPSILON * Math.sqrt(a * b)) continue;
      moved = true;
      const half = (b - a) / (2 * c);
      const tangent = (half < 0 ? -1 : 1) / (Math.abs(half) + Math.hypot(1, half));
      turn(one, other, tangent);
      turn(right[i]!, right[j]!, tangent);
    }
  }
  return moved;
}

function turn(one: number[], other: number[], tangent: number): void {
  const cosine = 1 / Math.hypot(1, tangent);
  const sine = cosine * tangent;
  one.forEach((was, row) => {
    const too = other[row]!;
    one[row] = cosine * was - sine * too;
    other[row] = sine * was + cosine * too;
  });
}

function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, at, row) => sum + at * other[row]!, 0);
}
