import type { HairHistory, HairState } from "../../../core/document/consultation"
import { strandParts, zoneNames } from "../../../core/document/consultation"
import type { HairRun } from "../../../core/text/hairRuns"
import type {
  histories as englishHistories,
  levelNames as englishLevels,
  hairLine as englishLine,
  porosities as englishPorosities,
  stretches as englishStretches,
} from "../../en/client/hair"

export const histories: typeof englishHistories = {
  coloured: "Gefärbt",
  lightened: "Blondiert",
  permed: "Dauerwelle",
  relaxed: "Geglättet",
  henna: "Henna",
  "metallic-salts": "Metallsalze oder Mischhenna",
}
const historiesInside: Record<HairHistory, string> = {
  coloured: "gefärbt",
  lightened: "blondiert",
  permed: "Dauerwelle",
  relaxed: "geglättet",
  henna: "Henna",
  "metallic-salts": "Metallsalze oder Mischhenna",
}
export const porosities: typeof englishPorosities = { low: "Gering", usual: "Normal", high: "Hoch" }
const porositiesInside: Record<NonNullable<HairState["porosity"]>, string> = {
  low: "geringe Porosität",
  usual: "normale Porosität",
  high: "hohe Porosität",
}
export const stretches: typeof englishStretches = {
  "springs-back": "Federt zurück",
  "stays-stretched": "Bleibt gedehnt",
  breaks: "Reißt",
}
const stretchesInside: Record<NonNullable<HairState["stretch"]>, string> = {
  "springs-back": "federt zurück",
  "stays-stretched": "bleibt gedehnt",
  breaks: "reißt",
}
/** The levels 1 to 10 by the names of the trade. */
export const levelNames: typeof englishLevels = {
  1: "schwarz",
  2: "schwarzbraun",
  3: "dunkelbraun",
  4: "mittelbraun",
  5: "hellbraun",
  6: "dunkelblond",
  7: "mittelblond",
  8: "hellblond",
  9: "lichtblond",
  10: "hell-lichtblond",
}

/** What is recorded of the hair, a line for zones that are alike. */
export const hairLine: typeof englishLine = (t, { zones: zoneNamed, strandParts: partNamed }) => {
  const state = ({ level, history, porosity, stretch }: HairState) =>
    [
      ...(level === null ? [] : [`Tonhöhe ${t.number(level)}`]),
      ...(history?.length === 0 ? ["unbehandelt"] : (history ?? []).map((kind) => historiesInside[kind])),
      ...(porosity === null ? [] : [porositiesInside[porosity]]),
      ...(stretch === null ? [] : [stretchesInside[stretch]]),
    ].join(", ")
  const run = ({ parts, state: seen }: HairRun) =>
    parts.length === strandParts.length
      ? `Ansatz bis Spitzen ${state(seen)}`
      : `${t.and(parts.map((part) => partNamed[part]))} ${state(seen)}`
  return ({ zones, runs }) => {
    const where =
      zones.length === zoneNames.length
        ? "Ganzer Kopf"
        : t.capital(t.and(zones.map((zone) => zoneNamed[zone])))
    return `${where}: ${runs.map(run).join("; ")}.`
  }
}
