import type { HairHistory, HairState } from "../../../core/document/consultation"
import { type StrandPart, strandParts, type Zone, zoneNames } from "../../../core/document/consultation"
import type { HairRun, ZoneHair } from "../../../core/text/hairRuns"
import type { Tools } from "../../tools"

type Porosity = NonNullable<HairState["porosity"]>
type Stretch = NonNullable<HairState["stretch"]>

export const histories: Record<HairHistory, string> = {
  coloured: "Coloured",
  lightened: "Lightened",
  permed: "Permed",
  relaxed: "Relaxed",
  henna: "Henna",
  "metallic-salts": "Metallic salts or compound henna",
}
const historiesInside: Record<HairHistory, string> = {
  coloured: "coloured",
  lightened: "lightened",
  permed: "permed",
  relaxed: "relaxed",
  henna: "henna",
  "metallic-salts": "metallic salts or compound henna",
}
export const porosities: Record<Porosity, string> = { low: "Low", usual: "Normal", high: "High" }
const porositiesInside: Record<Porosity, string> = {
  low: "low porosity",
  usual: "normal porosity",
  high: "high porosity",
}
export const stretches: Record<Stretch, string> = {
  "springs-back": "Springs back",
  "stays-stretched": "Stays stretched",
  breaks: "Breaks",
}
const stretchesInside: Record<Stretch, string> = {
  "springs-back": "springs back",
  "stays-stretched": "stays stretched",
  breaks: "breaks",
}
/** The levels 1 to 10 by name. */
export const levelNames: Record<number, string> = {
  1: "black",
  2: "darkest brown",
  3: "dark brown",
  4: "medium brown",
  5: "light brown",
  6: "dark blonde",
  7: "medium blonde",
  8: "light blonde",
  9: "very light blonde",
  10: "lightest blonde",
}

/** The names of the places that hair is told by. */
export type HairPlaces = {
  zones: Readonly<Record<Zone, string>>
  strandParts: Readonly<Record<StrandPart, string>>
}

/** What is recorded of the hair, a line for zones that are alike. */
export function hairLine(t: Tools, { zones: zoneNamed, strandParts: partNamed }: HairPlaces) {
  const histories = t.spelled(historiesInside)
  const state = ({ level, history, porosity, stretch }: HairState) =>
    [
      ...(level === null ? [] : [`level ${t.number(level)}`]),
      ...(history?.length === 0 ? ["never treated"] : (history ?? []).map((kind) => histories[kind])),
      ...(porosity === null ? [] : [porositiesInside[porosity]]),
      ...(stretch === null ? [] : [stretchesInside[stretch]]),
    ].join(", ")
  const run = ({ parts, state: seen }: HairRun) =>
    parts.length === strandParts.length
      ? `root to ends ${state(seen)}`
      : `${t.and(parts.map((part) => partNamed[part]))} ${state(seen)}`
  return ({ zones, runs }: ZoneHair) => {
    const where =
      zones.length === zoneNames.length ? "All over" : t.capital(t.and(zones.map((zone) => zoneNamed[zone])))
    return `${where}: ${runs.map(run).join("; ")}.`
  }
}
