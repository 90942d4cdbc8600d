/**
 * A band of hair as a grid on the scalp: ribs (stations) square to the parting, each with the same number of
 * layers. The one grid that figures are summed over and pictures drawn from. mm, head frame.
 */
export type BandShape = {
  stations: number
  layers: number
  /** x, y, z of each grid point, from index 3 x (station x layers + layer); layer 0 lies on the parting. */
  points: Float64Array
  /** Where each grid point lies in the scalp map, u and v by turns. */
  places: Float64Array
  /** Outward unit normals, laid out like the points. */
  normals: Float64Array
  /** Of each station, how far along the parting it stands; closer together where the hairline cuts the band askew. */
  alongMm: Float64Array
  /** Of each station, how deep the band goes there: what is asked for, or less where the hairline ends it. */
  depthMm: Float64Array
  /** The hair-bearing scalp of each cell, cm2, column by column from the first station and layer by layer from the parting; no scalp is in two cells. */
  areasCm2: Float64Array
}

/** The grid alone, before it is known what of it counts and where it lies in the map. */
export type Grid = Omit<BandShape, "areasCm2" | "places">
