import type { ViewPoint } from "../frames"

/** One pen line of the head's drawing, in page mm at life size. */
export type HeadLine = {
  part: "outline" | "ear" | "eye" | "brow" | "nose" | "lips" | "jaw" | "neck"
  weight: "bold" | "medium" | "fine"
  path: readonly ViewPoint[]
}
