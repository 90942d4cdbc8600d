import type { ScreenPoint, ViewPoint } from "../../geometry/surface/frames"
import type { Scene } from "./marks"

/** A page with a head on it that something can be laid over, wherever it stands: pixels from its top left corner. */
export type OverlaidPane = {
  scene: Scene
  /** Large enough for hands. */
  enlarged: boolean
  width: number
  height: number
  toPane(at: ViewPoint): ScreenPoint
  fromPane(at: ScreenPoint): ViewPoint
}
