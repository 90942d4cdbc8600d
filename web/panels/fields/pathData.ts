import type { ViewPoint } from "../../../geometry/surface/frames"

/** A line as path data, mm. A page's y runs up, a picture's down. */
export const pathData = (path: readonly ViewPoint[]) =>
  `M${path.map(([x, y]) => `${tenth(x)} ${tenth(-y)}`).join("L")}`

const tenth = (mm: number) => Math.round(mm * 10) / 10
