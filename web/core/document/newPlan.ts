import { densityPerCm2, fibreUm } from "../../../presets/client/hairTypes"
import { startingHeadSize } from "../../../presets/client/headSizes"
import { developerHabits } from "../../../presets/formula/developers"
import { startingLengthCm, startingProduct, startingRatio } from "../../../presets/plans/startingPlan"
import { newId } from "./newId"
import { planKind, planVersion } from "./planKind"
import type { Plan } from "./schema"

/** An empty plan for a client nothing is known of yet. */
export const newPlan = (today: Date): Plan => ({
  kind: planKind,
  version: planVersion,
  id: newId(),
  name: "",
  date: dayOf(today),
  client: { initials: "" },
  head: { size: startingHeadSize, hairline: { form: "round" } },
  hair: {
    densityPerCm2: densityPerCm2.medium.value,
    fibreUm: fibreUm.medium.value,
    lengthCm: startingLengthCm,
  },
  mixes: [
    {
      id: "A",
      product: startingProduct,
      developerVolume: developerHabits.usualVolume,
      ratio: { lightener: startingRatio.lightener, developer: startingRatio.developer.value },
    },
  ],
  sections: [],
  note: "",
})

/** The same plan as one of its own, beside the first. */
export const copyOf = (plan: Plan): Plan => ({ ...plan, id: newId() })

/** The day where the salon is, not in Greenwich. */
const dayOf = (date: Date) =>
  [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part) => String(part).padStart(2, "0"))
    .join("-")
