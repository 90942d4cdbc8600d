import type { PartingWay, ToolName } from "../../../core/placement/tools"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** What the hand does on the map, and how this hand works. */
export const toolRail = (t: Tools, { kinds }: CommonWords) => ({
  draw: "Draw",
  tools: {
    select: "Select",
    slice: t.capital(kinds.slice),
    weave: t.capital(kinds.weave),
    backcomb: t.capital(kinds.backcomb),
    painted: "Paint",
    "left-out": "Leave out",
    divide: "Divide",
    hairline: "Hairline",
  } satisfies Record<ToolName, string>,
  partingShape: "Parting shape",
  ways: {
    hairline: "Along the hairline",
    straight: "Straight",
    freehand: "Freehand",
  } satisfies Record<PartingWay, string>,
  takeHair: "Hair in front of or behind the parting",
  taken: { front: "In front", behind: "Behind" },
  depth: "Depth",
  snap: "Snap",
  gapToLast: "Gap to the last",
  hand: "Settings",
  leftHanded: "Left-handed",
  penOnly: "Draw with pen only",
  keys: "Keys ?",
})
