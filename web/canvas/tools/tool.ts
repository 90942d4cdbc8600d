import type { Head } from "../../../geometry/scalp/head"
import type { SurfacePoint, ViewPoint } from "../../../geometry/surface/frames"
import type { ViewName } from "../../../geometry/surface/views"
import type { Edit } from "../../core/document/edit"
import type { Refusal } from "../../core/document/refusal"
import type { Plan } from "../../core/document/schema"
import type { Scene } from "../../drawing/marks"
import type { DraftBox, Hint } from "../../session/draftStore"
import type { Done } from "../../session/words"

/** Where a hand is, understood once: the place on the scalp (null beside the head) and on the page, mm. */
export type Pointer = {
  viewName: ViewName
  scene: Scene
  at: SurfacePoint | null
  page: ViewPoint
  /** How far a touch may miss what it means, mm of the page. */
  reachMm: number
  shift: boolean
  /** Held to draw freely, without snapping. */
  alt: boolean
  /** What is touched comes into the selection beside what is in it. */
  adds: boolean
}

/** What a tool sees of the world; it changes none of it. */
export type Situation = {
  plan: Plan
  head: Head
  selectedIds: readonly string[]
  /** The dividing parting in hand. */
  dividerId: string | null
}

/** How a gesture ends: an edit with its label, a plain selection, or a reason why nothing came of it. */
export type Finished =
  | { label: Done; edit: Edit; select?: readonly string[]; divider?: string; hint?: Hint }
  | { divider: string }
  | { select: readonly string[]; box?: DraftBox }
  | Refusal

/** A tool is a plain object of pure functions. A draft is its own small state while the hand is down. */
export type Tool<Draft> = {
  start(pointer: Pointer, situation: Situation): Draft | null
  move(draft: Draft, pointer: Pointer, situation: Situation): Draft
  finish(draft: Draft, situation: Situation): Finished
}
