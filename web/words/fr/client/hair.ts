import type { HairHistory, HairState } from "../../../core/document/consultation"
import { type StrandPart, strandParts, type Zone, zoneNames } from "../../../core/document/consultation"
import type { HairRun, ZoneHair } from "../../../core/text/hairRuns"
import type { Tools } from "../../tools"

type Porosity = NonNullable<HairState["porosity"]>
type Stretch = NonNullable<HairState["stretch"]>

export const histories: Record<HairHistory, string> = {
  coloured: "Colorés",
  lightened: "Éclaircis",
  permed: "Permanentés",
  relaxed: "Défrisés",
  henna: "Henné",
  "metallic-salts": "Sels métalliques ou henné composé",
}
const historiesInside: Record<HairHistory, string> = {
  coloured: "colorés",
  lightened: "éclaircis",
  permed: "permanentés",
  relaxed: "défrisés",
  henna: "henné",
  "metallic-salts": "sels métalliques ou henné composé",
}
export const porosities: Record<Porosity, string> = { low: "Faible", usual: "Normale", high: "Forte" }
const porositiesInside: Record<Porosity, string> = {
  low: "porosité faible",
  usual: "porosité normale",
  high: "porosité forte",
}
export const stretches: Record<Stretch, string> = {
  "springs-back": "Reprend",
  "stays-stretched": "Reste étiré",
  breaks: "Casse",
}
const stretchesInside: Record<Stretch, string> = {
  "springs-back": "reprend après étirement",
  "stays-stretched": "reste étiré",
  breaks: "casse",
}
/** The levels 1 to 10 by name. */
export const levelNames: Record<number, string> = {
  1: "noir",
  2: "brun",
  3: "châtain foncé",
  4: "châtain",
  5: "châtain clair",
  6: "blond foncé",
  7: "blond",
  8: "blond clair",
  9: "blond très clair",
  10: "blond très très clair",
}

/** The names of the places that hair is told by. */
export type HairPlaces = {
  zones: Readonly<Record<Zone, string>>
  strandParts: Readonly<Record<StrandPart, string>>
}

/** What is recorded of the hair, a line for zones that are alike. */
export function hairLine(t: Tools, { zones: zoneNamed, strandParts: partNamed }: HairPlaces) {
  const state = ({ level, history, porosity, stretch }: HairState) =>
    [
      ...(level === null ? [] : [`hauteur ${t.number(level)}`]),
      ...(history?.length === 0 ? ["jamais traités"] : (history ?? []).map((kind) => historiesInside[kind])),
      ...(porosity === null ? [] : [porositiesInside[porosity]]),
      ...(stretch === null ? [] : [stretchesInside[stretch]]),
    ].join(", ")
  const run = ({ parts, state: seen }: HairRun) =>
    parts.length === strandParts.length
      ? `de la racine aux pointes ${state(seen)}`
      : `${t.and(parts.map((part) => partNamed[part]))} ${state(seen)}`
  return ({ zones, runs }: ZoneHair) => {
    const where =
      zones.length === zoneNames.length
        ? "Toute la tête"
        : t.capital(t.and(zones.map((zone) => zoneNamed[zone])))
    return `${where} : ${runs.map(run).join(" ; ")}.`
  }
}
