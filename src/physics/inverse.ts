/** Inverse of a small square matrix. */

/**
 * Writes the inverse of a matrix into `inverse`, by Gauss and Jordan's elimination with exchange of rows.
 * @param matrix by rows, n × n; used up
 * @returns false where there is none
 * Source: e.g. Golub & Van Loan 2013, Matrix Computations, sect. 3.4.
 */
export function invert(matrix: Float64Array, n: number, inverse: Float64Array): boolean {
  for (let i = 0; i < n * n; i++) inverse[i] = i % (n + 1) === 0 ? 1 : 0;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(matrix[i * n + k]!) > Math.abs(matrix[best * n + k]!)) best = i;
    const scale = 1 / matrix[best * n + k]!;
    if (!Number.isFinite(scale)) return false;
    for (const side of [matrix, inverse]) {
      for (let j = 0; j < n; j++) {
        const value = side[best * n + j]! * scale;
        side[best * n + j] = side[k * n + j]!;
        side[k * n + j] = value;
      }
    }
    for (let i = 0; i < n; i++) {
      const factor = i === k ? 0 : matrix[i * n + k]!;
      if (factor === 0) continue;
      for (let j = 0; j < n; j++) {
        matrix[i * n + j]! -= factor * matrix[k * n + j]!;
        inverse[i * n + j]! -= factor * inverse[k * n + j]!;
      }
    }
  }
  return true;
}
