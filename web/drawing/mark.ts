import type { ViewPoint } from "../../geometry/surface/frames"
import type { InkName } from "./inks"

/** What screen and paper draw, mm of one view at life size. An ink says how; see inks.ts. */
export type Mark =
  | { kind: "line"; path: readonly ViewPoint[]; closed?: boolean; ink: InkName }
  | { kind: "area"; path: readonly ViewPoint[]; ink: InkName }
  | { kind: "hatch"; segments: readonly (readonly [ViewPoint, ViewPoint])[]; ink: InkName }
  | { kind: "dot"; at: ViewPoint; ink: InkName }
  | { kind: "label"; at: ViewPoint; text: string; leader?: ViewPoint; ink: InkName }
