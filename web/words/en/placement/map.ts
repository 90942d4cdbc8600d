import type { Snapped } from "../../../../geometry/placing/snap"
import type { ViewName } from "../../../../geometry/surface/views"
import type { Side } from "../../../core/placement/places"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** Words on the map and beside the hand. */
export const map = (t: Tools, { directions, sides: sideNames }: CommonWords) => {
  const [left, right] = ["Client’s left", "Client’s right"]
  const views: Record<ViewName, string> = {
    front: "Front",
    left,
    right,
    back: "Back",
    top: "Top",
    turned: "Turntable",
    unrolled: "Scalp laid flat",
  }
  return {
    title: "Head map",
    views,
    /** What stands at the left and the right edge of a page. */
    edges: {
      front: [right, left],
      left: ["Face", "Back"],
      right: ["Back", "Face"],
      back: [left, right],
      top: [left, right],
      turned: null,
      unrolled: [left, right],
    } satisfies Record<ViewName, readonly [string, string] | null>,
    enlarge: (view: ViewName) => `${views[view]}: make it the large view`,
    /** How much of the head the large view shows. */
    framings: { hairline: "Hairline", whole: "Whole head" },
    /** What to do on an empty head; goes with the first foil. */
    firstStroke: "Drag along the dotted line",
    turn: "Turn the head",
    turns: { left: "← Left", right: "Right →", higher: "↑ Higher", lower: "↓ Lower" },
    /** What the large view shows, for whoever does not see it. */
    summary: ({ left, right, centre }: Record<Side, number>) => {
      const sides = [
        [right, `${t.whole(right)} ${sideNames.right}`],
        [left, `${t.whole(left)} ${sideNames.left}`],
        [centre, `${t.whole(centre)} ${sideNames.centre}`],
      ] as const
      const foils = t.count(left + right + centre, { one: "# foil", other: "# foils" })
      const shown = sides.filter(([count]) => count > 0).map(([, words]) => words)
      return shown.length === 0 ? "No foils on this side of the head" : `${foils}: ${shown.join(", ")}`
    },
    /** What a tap on the map took in hand; hair left out has no number of its own. */
    selected: ({ name, what }: { name: string | null; what: string }) =>
      name === null ? `Selected: ${what}` : `Selected: ${name}, ${what}`,
    strokeCancelled: "Stroke cancelled",
    /** What a stroke was drawn to, beside the hand. */
    snapped: ({ to, gapMm }: { to: Snapped["to"]; gapMm: number }) =>
      to === "last parting"
        ? `Snapped: parallel to the last parting, gap ${t.mm(gapMm, 1)}`
        : `Snapped: ${directions[to]}`,
    /** What was done, where it lies and how it runs: said once the hand lifts. */
    told: ({ done, where, runs }: { done: string; where: string; runs: string }) =>
      `${done}: ${where}, ${runs}`,
  }
}
