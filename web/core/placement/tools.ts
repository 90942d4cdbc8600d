import type { SectionKind } from "../../../geometry/section/section"
import { sectionKindNames } from "../kinds/kindRecords"

/** What the hand has taken up: a kind of section to draw, or another tool. */
export type ToolName = "select" | SectionKind | "divide" | "hairline"

/** The kind of section that a tool draws; null of a tool that draws none. */
export const kindDrawn = (tool: ToolName): SectionKind | null =>
  sectionKindNames.find((kind) => kind === tool) ?? null

/** How the points of a stroke become a parting. */
export type PartingWay = "hairline" | "straight" | "freehand"

/** Where a key nudges what is selected, as one sees it in front of the client. */
export type NudgeWay = "away" | "towards" | "right" | "left"
