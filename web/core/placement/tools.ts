import type { SectionKind } from "../../../geometry/section/section"

/** What the hand has taken up: a kind of section to draw, or another tool. */
export type ToolName = "select" | SectionKind | "divide" | "hairline"

/** How the points of a stroke become a parting. */
export type PartingWay = "hairline" | "straight" | "freehand"

/** Where a key nudges what is selected, as one sees it in front of the client. */
export type NudgeWay = "away" | "towards" | "right" | "left"
