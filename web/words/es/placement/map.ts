import type { Snapped } from "../../../../geometry/placing/snap"
import type { ViewName } from "../../../../geometry/surface/views"
import type { Side } from "../../../core/placement/places"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** Words on the map and beside the hand. */
export const map = (t: Tools, { directions }: CommonWords) => {
  const [left, right] = ["Izq. de cliente", "Der. de cliente"]
  const views: Record<ViewName, string> = {
    front: "Frente",
    left,
    right,
    back: "Detrás",
    top: "Arriba",
    turned: "Giratoria",
    unrolled: "Vista desplegada",
  }
  return {
    title: "Mapa de la cabeza",
    views,
    /** What stands at the left and the right edge of a page. */
    edges: {
      front: [right, left],
      left: ["Cara", "Detrás"],
      right: ["Detrás", "Cara"],
      back: [left, right],
      top: [left, right],
      turned: null,
      unrolled: [left, right],
    } satisfies Record<ViewName, readonly [string, string] | null>,
    enlarge: (view: ViewName) => `${views[view]}: ampliar esta vista`,
    /** How much of the head the large view shows. */
    framings: { hairline: "Contorno", whole: "Cabeza entera" },
    /** What to do on an empty head; goes with the first foil. */
    firstStroke: "Arrastre por la línea de puntos",
    turn: "Girar la cabeza",
    turns: { left: "← Izquierda", right: "Derecha →", higher: "↑ Subir", lower: "↓ Bajar" },
    /** What the large view shows, for whoever does not see it. */
    summary: ({ left, right, centre }: Record<Side, number>) => {
      const sides = [
        [right, `${t.whole(right)} a la derecha`],
        [left, `${t.whole(left)} a la izquierda`],
        [centre, `${t.whole(centre)} en el centro`],
      ] as const
      const foils = t.count(left + right + centre, { one: "# papel", other: "# papeles" })
      const shown = sides.filter(([count]) => count > 0).map(([, words]) => words)
      return shown.length === 0 ? "No hay papeles en este lado de la cabeza" : `${foils}: ${shown.join(", ")}`
    },
    /** What a tap on the map took in hand; hair left out has no number of its own. */
    selected: ({ name, what }: { name: string | null; what: string }) =>
      name === null ? `Seleccionado: ${what}` : `Seleccionado: ${name}, ${what}`,
    strokeCancelled: "Trazo cancelado",
    /** What a stroke was drawn to, beside the hand. */
    snapped: ({ to, gapMm }: { to: Snapped["to"]; gapMm: number }) =>
      to === "last parting"
        ? `Ajustada: paralela a la última raya, espacio ${t.mm(gapMm, 1)}`
        : `Ajustada: ${directions[to]}`,
    /** What was done, where it lies and how it runs: said once the hand lifts. */
    told: ({ done, where, runs }: { done: string; where: string; runs: string }) =>
      `${done}: ${where}, ${runs}`,
  }
}
