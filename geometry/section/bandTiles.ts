import { type BandSpans, lineStep } from "./bandSpans"
import { type CellSquares, numbersEach } from "./cellSquares"

/** So many lines make a row of tiles: a little over a millimetre. */
const linesEach = 8
const tileStep = linesEach * lineStep
const tileOf = (place: number) => Math.floor(place / tileStep)

/** What a band has of a stretch of the map: nothing of it, all of it, or its outline may run through. */
export const clear = 0
export const covered = 1
export const cut = 2

/** The map under a band in square tiles, row by row from the least v: what it has of each. */
export type BandTiles = { firstU: number; firstV: number; columns: number; rows: number; has: Uint8Array }

const remembered = new WeakMap<BandSpans, BandTiles>()

/** The tiles of a band, remembered for as long as its outline is. */
export function bandTiles(spans: BandSpans): BandTiles {
  const known = remembered.get(spans)
  if (known) return known
  const fresh = tilesOf(spans)
  remembered.set(spans, fresh)
  return fresh
}

function tilesOf(spans: BandSpans): BandTiles {
  const [firstU, firstV] = [tileOf(spans.lowU), tileOf(spans.lowV)]
  const [columns, rows] = [tileOf(spans.highU) - firstU + 1, tileOf(spans.highV) - firstV + 1]
  const tiles = { firstU, firstV, columns, rows, has: new Uint8Array(columns * rows) }
  for (let row = 0; row < rows; row++) coverRow(tiles, spans, row)
  cutAlong(tiles, spans)
  return tiles
}

/** Of a row the tiles whose middle the outline goes round: where none of it comes by, it goes round the whole tile. */
function coverRow(
  { firstU, firstV, columns, has }: BandTiles,
  { starts, stretches, firstLine }: BandSpans,
  row: number,
) {
  const line = (firstV + row) * linesEach + linesEach / 2 - firstLine
  if (line < 0 || line + 1 >= starts.length) return
  for (let i = starts[line]; i + 1 < starts[line + 1]; i += 2) {
    const end = Math.min(columns - 1, tileOf(stretches[i + 1]) - firstU)
    for (let column = Math.max(0, tileOf(stretches[i]) - firstU); column <= end; column++)
      has[row * columns + column] = covered
  }
}

function cutAlong({ firstU, firstV, columns, has }: BandTiles, { us, vs }: BandSpans) {
  for (let side = 0; side < us.length; side++) {
    const next = side + 1 === us.length ? 0 : side + 1
    const isRight = us[side] < us[next]
    const isUp = vs[side] < vs[next]
    const lastU = tileOf(us[isRight ? next : side]) - firstU
    const lastV = tileOf(vs[isUp ? next : side]) - firstV
    const fromU = tileOf(us[isRight ? side : next]) - firstU
    for (let row = tileOf(vs[isUp ? side : next]) - firstV; row <= lastV; row++)
      for (let column = fromU; column <= lastU; column++) has[row * columns + column] = cut
  }
}

/** The tiles that the upright boxes of so many cells lie on: first and last column, first and last row of each by turns. */
export function tilesUnder(squares: CellSquares): Int32Array {
  const count = squares.length / numbersEach
  const under = new Int32Array(4 * count)
  for (let cell = 0; cell < count; cell++)
    for (let i = 0; i < 4; i++) under[4 * cell + i] = tileOf(squares[cell * numbersEach + i])
  return under
}

/** Puts down, from an index on, what a band has of each cell of another: of the tiles under it all alike, or its outline may run through. */
export function hasOfCells(
  { firstU, firstV, columns, rows, has }: BandTiles,
  under: Int32Array,
  into: Uint8Array,
  from: number,
) {
  for (let cell = 0; 4 * cell < under.length; cell++) {
    const fromU = under[4 * cell] - firstU
    const toU = under[4 * cell + 1] - firstU
    const fromV = under[4 * cell + 2] - firstV
    const toV = under[4 * cell + 3] - firstV
    if (toU < 0 || toV < 0 || fromU >= columns || fromV >= rows) continue
    const isOver = fromU < 0 || fromV < 0 || toU >= columns || toV >= rows
    const first = isOver ? clear : has[fromV * columns + fromU]
    const firstOfRow = Math.max(0, fromU)
    const lastOfRow = Math.min(columns - 1, toU)
    into[from + cell] = first
    for (let row = Math.max(0, fromV); row <= Math.min(rows - 1, toV); row++)
      for (let i = row * columns + firstOfRow; i <= row * columns + lastOfRow; i++)
        if (has[i] !== first) into[from + cell] = cut
  }
}
