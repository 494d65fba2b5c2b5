/**
 * Solution of a dense square system by elimination with row exchange.
 *
 * @param matrix rows of a square matrix; overwritten
 * @param right right-hand side; overwritten
 * @returns the unknowns, or null where the matrix is singular
 */
export function solveLinear(matrix: Float64Array[], right: Float64Array): Float64Array | null {
  const size = right.length;
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < size; row += 1) {
      if (Math.abs(matrix[row]![column]!) > Math.abs(matrix[pivot]![column]!)) pivot = row;
    }
    if (!(Math.abs(matrix[pivot]![column]!) > 0)) return null;
    const pivotRow = matrix[pivot]!;
    matrix[pivot] = matrix[column]!;
    matrix[column] = pivotRow;
    const pivotRight = right[pivot]!;
    right[pivot] = right[column]!;
    right[column] = pivotRight;
    for (let row = column + 1; row < size; row += 1) {
      const target = matrix[row]!;
      const factor = target[column]! / pivotRow[column]!;
      if (factor === 0) continue;
      for (let index = column; index < size; index += 1) {
        target[index] = target[index]! - factor * pivotRow[index]!;
      }
      right[row] = right[row]! - factor * pivotRight;
    }
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = right[row]!;
    const values = matrix[row]!;
    for (let index = row + 1; index < size; index += 1) sum -= values[index]! * right[index]!;
    right[row] = sum / values[row]!;
  }
  return right;
}
