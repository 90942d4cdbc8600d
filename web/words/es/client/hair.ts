import type { HairHistory, HairState } from "../../../core/document/consultation"
import { strandParts, zoneNames } from "../../../core/document/consultation"
import type { HairRun, ZoneHair } from "../../../core/text/hairRuns"
import type { HairPlaces } from "../../en/client/hair"
import type { Tools } from "../../tools"

type Porosity = NonNullable<HairState["porosity"]>
type Stretch = NonNullable<HairState["stretch"]>

export const histories: Record<HairHistory, string> = {
  coloured: "Teñido",
  lightened: "Decolorado",
  permed: "Con permanente",
  relaxed: "Alisado",
  henna: "Henna",
  "metallic-salts": "Sales metálicas o henna compuesta",
}
const historiesInside: Record<HairHistory, string> = {
  coloured: "teñido",
  lightened: "decolorado",
  permed: "con permanente",
  relaxed: "alisado",
  henna: "con henna",
  "metallic-salts": "sales metálicas o henna compuesta",
}
export const porosities: Record<Porosity, string> = { low: "Baja", usual: "Normal", high: "Alta" }
const porositiesInside: Record<Porosity, string> = {
  low: "porosidad baja",
  usual: "porosidad normal",
  high: "porosidad alta",
}
export const stretches: Record<Stretch, string> = {
  "springs-back": "Recupera",
  "stays-stretched": "Queda estirado",
  breaks: "Se rompe",
}
const stretchesInside: Record<Stretch, string> = {
  "springs-back": "recupera",
  "stays-stretched": "queda estirado",
  breaks: "se rompe",
}
/** The levels 1 to 10 by name. */
export const levelNames: Record<number, string> = {
  1: "negro",
  2: "castaño muy oscuro",
  3: "castaño oscuro",
  4: "castaño medio",
  5: "castaño claro",
  6: "rubio oscuro",
  7: "rubio medio",
  8: "rubio claro",
  9: "rubio muy claro",
  10: "rubio clarísimo",
}

/** What is recorded of the hair, a line for zones that are alike. */
export function hairLine(t: Tools, { zones: zoneNamed, strandParts: partNamed }: HairPlaces) {
  const state = ({ level, history, porosity, stretch }: HairState) =>
    [
      ...(level === null ? [] : [`nivel ${t.number(level)}`]),
      ...(history?.length === 0 ? ["nunca tratado"] : (history ?? []).map((kind) => historiesInside[kind])),
      ...(porosity === null ? [] : [porositiesInside[porosity]]),
      ...(stretch === null ? [] : [stretchesInside[stretch]]),
    ].join(", ")
  const run = ({ parts, state: seen }: HairRun) =>
    parts.length === strandParts.length
      ? `de raíz a puntas ${state(seen)}`
      : `${t.and(parts.map((part) => partNamed[part]))} ${state(seen)}`
  return ({ zones, runs }: ZoneHair) => {
    const where =
      zones.length === zoneNames.length
        ? "Toda la cabeza"
        : t.capital(t.and(zones.map((zone) => zoneNamed[zone])))
    return `${where}: ${runs.map(run).join("; ")}.`
  }
}
