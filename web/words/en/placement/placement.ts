import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { actions } from "./actions"
import { done } from "./done"
import { editor } from "./editor"
import { foot } from "./foot"
import { hairline } from "./hairline"
import { list } from "./list"
import { map } from "./map"
import { painting } from "./painting"
import { stack } from "./stack"
import { toolRail } from "./toolRail"
import { working } from "./working"

/** Drawing on the head, and what stands beside the map. */
export const placement = (t: Tools, names: CommonWords) => {
  return {
    done: done(t, names),
    toolRail: toolRail(t, names),
    map: map(t, names),
    list: list(t, names),
    actions: actions(),
    editor: editor(t, names),
    foot: foot(t, names),
    hairline: hairline(t, names),
    working: working(t, names),
    stack: stack(t, names),
    painting: painting(t),
  }
}

export type PlacementWords = ReturnType<typeof placement>
