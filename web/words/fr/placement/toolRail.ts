import type { PartingWay, ToolName } from "../../../core/placement/tools"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** What the hand does on the map, and how this hand works. */
export const toolRail = (t: Tools, { kinds }: CommonWords) => ({
  draw: "Tracer",
  tools: {
    select: "Choisir",
    slice: t.capital(kinds.slice),
    weave: t.capital(kinds.weave),
    backcomb: t.capital(kinds.backcomb),
    painted: "Peindre",
    "left-out": "Laisser",
    divide: "Diviser",
    hairline: "Lisière",
  } satisfies Record<ToolName, string>,
  partingShape: "Forme de séparation",
  ways: {
    hairline: "Le long de la lisière",
    straight: "Droite",
    freehand: "À main levée",
  } satisfies Record<PartingWay, string>,
  takeHair: "Cheveux devant ou derrière la séparation",
  taken: { front: "Devant", behind: "Derrière" },
  depth: "Épaisseur",
  snap: "Caler",
  gapToLast: "Écart au précédent",
  hand: "Réglages",
  leftHanded: "De la main gauche",
  penOnly: "Tracer au stylet seul",
  keys: "Touches ?",
})
