import type { ViewPoint } from "../surface/frames"

/** One pen line of the head's drawing, in page mm at life size. */
export type HeadLine = {
  part: "outline" | "ear" | "eye" | "brow" | "nose" | "lips" | "jaw" | "neck"
  weight: "bold" | "medium" | "fine"
  path: readonly ViewPoint[]
}

/** A line on the unscaled head: places and outward normals, mm in the head frame. */
export type Feature = Pick<HeadLine, "part" | "weight"> & { points: Float64Array; normals: Float64Array }
