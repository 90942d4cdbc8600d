import type { PartingWay, ToolName } from "../../../core/placement/tools"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** What the hand does on the map, and how this hand works. */
export const toolRail = (t: Tools, { kinds }: CommonWords) => ({
  draw: "Dibujar",
  tools: {
    select: "Elegir",
    slice: t.capital(kinds.slice),
    weave: t.capital(kinds.weave),
    backcomb: t.capital(kinds.backcomb),
    painted: "Pintar",
    "left-out": "Dejar fuera",
    divide: "Dividir",
    hairline: "Contorno",
  } satisfies Record<ToolName, string>,
  partingShape: "Forma de la raya",
  ways: {
    hairline: "Por el contorno",
    straight: "Recta",
    freehand: "A mano alzada",
  } satisfies Record<PartingWay, string>,
  takeHair: "Cabello delante o detrás de la raya",
  taken: { front: "Delante", behind: "Detrás" },
  depth: "Grosor",
  snap: "Ajustar",
  gapToLast: "Espacio al último",
  hand: "Ajustes",
  leftHanded: "Mano izquierda",
  penOnly: "Dibujar solo con lápiz",
  keys: "Teclas ?",
})
