import type { Snapped } from "../../../../geometry/placing/snap"
import type { ViewName } from "../../../../geometry/surface/views"
import type { Side } from "../../../core/placement/places"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** Words on the map and beside the hand. The client's own side is called theirs: "sa gauche". */
export const map = (t: Tools, { directions }: CommonWords) => {
  const [left, right] = ["Sa gauche", "Sa droite"]
  const views: Record<ViewName, string> = {
    front: "Face",
    left,
    right,
    back: "Arrière",
    top: "Dessus",
    turned: "Vue tournante",
    unrolled: "Cuir chevelu à plat",
  }
  return {
    title: "Schéma de tête",
    views,
    /** What stands at the left and the right edge of a page. */
    edges: {
      front: [right, left],
      left: ["Visage", "Arrière"],
      right: ["Arrière", "Visage"],
      back: [left, right],
      top: [left, right],
      turned: null,
      unrolled: [left, right],
    } satisfies Record<ViewName, readonly [string, string] | null>,
    enlarge: (view: ViewName) => `${views[view]} : en faire la grande vue`,
    /** How much of the head the large view shows. */
    framings: { hairline: "Lisière", whole: "Tête entière" },
    /** What to do on an empty head; goes with the first foil. */
    firstStroke: "Tracez sur le pointillé",
    turn: "Tourner la tête",
    turns: { left: "← Gauche", right: "Droite →", higher: "↑ Plus haut", lower: "↓ Plus bas" },
    /** What the large view shows, for whoever does not see it. */
    summary: ({ left, right, centre }: Record<Side, number>) => {
      const sides = [
        [right, `${t.whole(right)} à droite`],
        [left, `${t.whole(left)} à gauche`],
        [centre, `${t.whole(centre)} au centre`],
      ] as const
      const foils = t.count(left + right + centre, { one: "# papillote", other: "# papillotes" })
      const shown = sides.filter(([count]) => count > 0).map(([, words]) => words)
      return shown.length === 0 ? "Aucune papillote de ce côté de la tête" : `${foils}: ${shown.join(", ")}`
    },
    /** What a tap on the map took in hand; hair left out has no number of its own. */
    selected: ({ name, what }: { name: string | null; what: string }) =>
      name === null ? `Choisi : ${what}` : `Choisi : ${name}, ${what}`,
    strokeCancelled: "Tracé annulé",
    /** What a stroke was drawn to, beside the hand. */
    snapped: ({ to, gapMm }: { to: Snapped["to"]; gapMm: number }) =>
      to === "last parting"
        ? `Calée : parallèle à la dernière séparation, écart ${t.mm(gapMm, 1)}`
        : `Calée : ${directions[to]}`,
    /** What was done, where it lies and how it runs: said once the hand lifts. */
    told: ({ done, where, runs }: { done: string; where: string; runs: string }) =>
      `${done} : ${where}, ${runs}`,
  }
}
