import type { Head } from "../../../geometry/scalp/head"
import type { ViewName } from "../../../geometry/surface/views"
import type { Plan } from "../../core/document/schema"
import type { Camera } from "./camera"
import type { HeadPicture } from "./headPicture"
import type { WorkingMarks } from "./workingMarks"

/** Everything a pane shows at rest. */
export type PaneState = {
  name: ViewName
  enlarged: boolean
  plan: Plan
  head: Head
  picture: HeadPicture
  camera: Camera
  selectedIds: readonly string[]
  /** The dividing parting in hand. */
  dividerId: string | null
  /** A minute of the visit is shown: the foils are drawn by it, not by their mixes. */
  isInTime: boolean
  /** How working sections are drawn, once that is known. */
  working: WorkingMarks | null
}
