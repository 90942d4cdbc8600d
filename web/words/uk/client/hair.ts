import type { HairHistory, HairState } from "../../../core/document/consultation"
import { strandParts, zoneNames } from "../../../core/document/consultation"
import type { HairRun, ZoneHair } from "../../../core/text/hairRuns"
import type { HairPlaces } from "../../en/client/hair"
import type { Tools } from "../../tools"

type Porosity = NonNullable<HairState["porosity"]>
type Stretch = NonNullable<HairState["stretch"]>

export const histories: Record<HairHistory, string> = {
  coloured: "Фарбоване",
  lightened: "Освітлене",
  permed: "Завивка",
  relaxed: "Хім. випрямлення",
  henna: "Хна",
  "metallic-salts": "Солі металів або хна з домішками",
}
const historiesInside: Record<HairHistory, string> = {
  coloured: "фарбоване",
  lightened: "освітлене",
  permed: "завивка",
  relaxed: "хімічне випрямлення",
  henna: "хна",
  "metallic-salts": "солі металів або хна з домішками",
}
export const porosities: Record<Porosity, string> = { low: "Низька", usual: "Звичайна", high: "Висока" }
const porositiesInside: Record<Porosity, string> = {
  low: "низька пористість",
  usual: "звичайна пористість",
  high: "висока пористість",
}
export const stretches: Record<Stretch, string> = {
  "springs-back": "Пружинить",
  "stays-stretched": "Лишається розтягнутим",
  breaks: "Рветься",
}
const stretchesInside: Record<Stretch, string> = {
  "springs-back": "пружинить",
  "stays-stretched": "лишається розтягнутим",
  breaks: "рветься",
}
/** The levels 1 to 10 by name. */
export const levelNames: Record<number, string> = {
  1: "чорний",
  2: "дуже темний шатен",
  3: "темний шатен",
  4: "середній шатен",
  5: "світлий шатен",
  6: "темний блонд",
  7: "середній блонд",
  8: "світлий блонд",
  9: "дуже світлий блонд",
  10: "найсвітліший блонд",
}

/** What is recorded of the hair, a line for zones that are alike. */
export function hairLine(t: Tools, { zones: zoneNamed, strandParts: partNamed }: HairPlaces) {
  const state = ({ level, history, porosity, stretch }: HairState) =>
    [
      ...(level === null ? [] : [`рівень ${t.number(level)}`]),
      ...(history?.length === 0
        ? ["без хімічних процедур"]
        : (history ?? []).map((kind) => historiesInside[kind])),
      ...(porosity === null ? [] : [porositiesInside[porosity]]),
      ...(stretch === null ? [] : [stretchesInside[stretch]]),
    ].join(", ")
  const run = ({ parts, state: seen }: HairRun) =>
    parts.length === strandParts.length
      ? `від кореня до кінців — ${state(seen)}`
      : `${t.and(parts.map((part) => partNamed[part]))} — ${state(seen)}`
  return ({ zones, runs }: ZoneHair) => {
    const where =
      zones.length === zoneNames.length
        ? "Усе волосся"
        : t.capital(t.and(zones.map((zone) => zoneNamed[zone])))
    return `${where}: ${runs.map(run).join("; ")}.`
  }
}
