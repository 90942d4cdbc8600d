import type { HouseWords } from "../en/techniques/houseWords"
import type { TechniquesWords } from "../en/techniques/techniques"
import type { Differing } from "./joined"
import { spelled, spelledMessage } from "./spelling"

export const techniques = (under: TechniquesWords): Differing<TechniquesWords> => {
  const house = spelledSteps(under.house)
  return {
    house: {
      ...house,
      "off-centre-frame": ofWornPart(under.house["off-centre-frame"]),
      "fringe-panel": {
        ...house["fringe-panel"],
        aim: "Lighter bangs with a natural edge.",
        notes:
          "For bangs worn down or parted like a curtain. The edge stays natural, so regrowth is softer. If the bangs are to be cut, cut them first.",
      },
    },
    measures: { "backcomb-depth": "Teased depth" },
  }
}

type Steps = (figures: never) => readonly string[]

const spelledSteps = (house: HouseWords): Differing<HouseWords> =>
  Object.fromEntries(
    Object.entries(house).map(([id, { steps }]) => [id, { steps: spelledMessage(steps as Steps) }]),
  )

/** The line that hair is worn to is a part; one drawn with the comb for a foil stays a parting. */
const ofWornPart = ({ name, aim, notes, steps }: HouseWords["off-centre-frame"]) => {
  const part = (text: string) => text.replaceAll("parting", "part")
  return {
    name,
    aim: part(aim),
    notes: part(notes),
    steps: (figures: Parameters<typeof steps>[0]) => spelled(steps(figures)).map(part),
  }
}
