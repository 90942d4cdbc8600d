import { createStore } from "zustand/vanilla"
import type { ViewName } from "../../geometry/surface/views"
import { usualGapMm } from "../../presets/placement/stacking"
import type { SheetName } from "../../presets/sheets/sheetNames"
import { usualSection } from "../core/document/newSection"
import type { NextSection } from "../core/kinds/kindRecord"
import type { PartingWay, ToolName } from "../core/placement/tools"

export type ScreenName = "client" | "placement" | "formula" | "timing" | "chair" | "sheets"

/** How the plan is looked at and what is in hand. Never saved, never undone. */
export type Session = {
  screen: ScreenName
  tool: ToolName
  way: PartingWay
  selectedIds: readonly string[]
  /** A touch takes a section into the selection or out of it, and a stroke beside them draws a box. */
  several: boolean
  /** The dividing parting in hand; counts only while no section is. */
  dividerId: string | null
  /** The foils of the list stand under their working sections. */
  groupList: boolean
  /** The view that fills the page, or null when all stand side by side. */
  enlarged: ViewName | null
  /** How much of the head the large view shows: the hairline where all that is drawn lies in it, unless one is chosen. */
  framing: "auto" | "hairline" | "whole"
  /** The turntable, radians: see turnedView. */
  yaw: number
  pitch: number
  /** The minute of the visit the map is shaded for, or null while it shows the mixes. */
  mapMin: number | null
  /** The hair lies over the large map as it falls. */
  isFalling: boolean
  /** What the next section drawn starts from. */
  next: NextSection
  /** Strokes snap to the trade's directions, to the hairline and to the last parting. */
  snaps: boolean
  /** Hair left between a parting and the next beside it, mm. */
  gapMm: number
  /** Only a pen draws; fingers move the page. */
  penOnly: boolean
  leftHanded: boolean
  /** The sheet looked at. */
  sheet: SheetName
  /** Left and right as the client sees them in the mirror. */
  mirrorView: boolean
  /** The plan that is the invented example; null where none is. */
  exampleId: string | null
}

export const startSession = (): Session => ({
  screen: "placement",
  tool: "select",
  way: "hairline",
  selectedIds: [],
  several: false,
  dividerId: null,
  groupList: true,
  enlarged: null,
  framing: "auto",
  yaw: 0.7,
  pitch: 0.3,
  mapMin: null,
  isFalling: false,
  next: usualSection,
  snaps: true,
  gapMm: usualGapMm.value,
  penOnly: false,
  leftHanded: false,
  sheet: "placement",
  mirrorView: false,
  exampleId: null,
})

export const sessionStore = createStore<Session>(startSession)

/** Takes up a tool. Who shapes the hairline has no section in hand. */
export const takeTool = (tool: ToolName) =>
  sessionStore.setState(tool === "hairline" ? { tool, selectedIds: [], dividerId: null } : { tool })

/** Whether the hair lies over the large map; a minute of the visit that is looked at comes before it. */
export const isHairShown = ({ isFalling, mapMin }: Session) => isFalling && mapMin === null

/** The dividing parting in hand, when no section is. */
export const dividerInHand = ({ dividerId, selectedIds }: Session) =>
  selectedIds.length === 0 ? dividerId : null
