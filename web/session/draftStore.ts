import { createStore } from "zustand/vanilla"
import type { Snapped } from "../../geometry/placing/snap"
import type { Section } from "../../geometry/section/section"
import type { ViewPoint } from "../../geometry/surface/frames"
import type { SurfacePath } from "../../geometry/surface/surfacePath"
import type { ViewName } from "../../geometry/surface/views"
import type { Plan } from "../core/document/schema"
import type { Done } from "./words"

/** What the stroke in hand was drawn to, the gap to the last parting in mm, and the line that shows it. */
export type Hint = { to: Snapped["to"]; gapMm: number; guide: SurfacePath }

/** The stroke in hand: the plan as it would be, what would be new in it, or why nothing would come of it. */
export type Draft = { label: Done; plan: Plan; changed: readonly Section[]; refused?: string; hint?: Hint }

/** A box drawn round sections to select them, on one page, mm. */
export type DraftBox = { viewName: ViewName; from: ViewPoint; to: ViewPoint }

/** Lives only while a hand is down; never saved, never undone. */
export const draftStore = createStore<{ draft: Draft | null; box: DraftBox | null }>(() => ({
  draft: null,
  box: null,
}))
