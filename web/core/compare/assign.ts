/** Which of one list goes with which of another, by their places; what stays alone is in neither. */
export type Assigned = readonly (readonly [first: number, second: number])[]

/**
 * The pairs of two lists that cost least in all, where each one left alone costs `alone`. Exact: the shortest
 * augmenting paths of Jonker and Volgenant over a square whose missing places are "alone", its time the cube of the longer list.
 */
export function assign(costs: readonly (readonly number[])[], alone: number): Assigned {
  const [rows, columns] = [costs.length, costs[0]?.length ?? 0]
  const size = Math.max(rows, columns)
  // A pair that costs more than its two left alone is two left alone; an empty place of the square stands for one.
  const costAt = (row: number, column: number) =>
    row < rows && column < columns ? Math.min(costs[row][column], 2 * alone) : alone
  const square = Float64Array.from({ length: size * size }, (_, i) => costAt(Math.floor(i / size), i % size))
  const rowOf = leastAssignment(square, size)
  return Array.from(rowOf, (row, column) => [row, column] as const)
    .filter(([row, column]) => row < rows && column < columns && costs[row][column] < 2 * alone)
    .sort(([a], [b]) => a - b)
}

/** Of a square of costs, row by row: the row of each column, so that the sum is least. */
function leastAssignment(square: Float64Array, size: number): Int32Array {
  const none = size
  const rowOf = new Int32Array(size + 1).fill(-1)
  const ofRow = new Float64Array(size)
  const ofColumn = new Float64Array(size + 1)
  for (let row = 0; row < size; row++) {
    const found = shortestPath(row, { square, size, rowOf, ofRow, ofColumn })
    for (let column = found.end; column !== none; column = found.before[column])
      rowOf[column] = rowOf[found.before[column]]
  }
  return rowOf.slice(0, size)
}

type Search = {
  square: Float64Array
  size: number
  rowOf: Int32Array
  ofRow: Float64Array
  ofColumn: Float64Array
}

/** The cheapest way from a row to a free column over columns that change their rows; the prices are kept up on the way. */
function shortestPath(start: number, { square, size, rowOf, ofRow, ofColumn }: Search) {
  const before = new Int32Array(size + 1).fill(size)
  const least = new Float64Array(size + 1).fill(Infinity)
  const done = new Uint8Array(size + 1)
  rowOf[size] = start
  let at = size
  while (rowOf[at] !== -1) {
    done[at] = 1
    const row = rowOf[at]
    let [step, next] = [Infinity, -1]
    for (let column = 0; column < size; column++) {
      if (done[column]) continue
      const cost = square[row * size + column] - ofRow[row] - ofColumn[column]
      if (cost < least[column]) {
        least[column] = cost
        before[column] = at
      }
      if (least[column] < step) {
        step = least[column]
        next = column
      }
    }
    for (let column = 0; column <= size; column++) {
      if (done[column]) {
        ofRow[rowOf[column]] += step
        ofColumn[column] -= step
      } else least[column] -= step
    }
    at = next
  }
  return { end: at, before }
}
