import { dyeDiffusion } from "../../../../presets/client/permeability"

const { untreated, peroxideHour, creamHalfHour } = dyeDiffusion

/** How many times as fast treated hair lets dye in as untreated hair does. */
export const morePermeable = {
  peroxideHour: peroxideHour / untreated,
  creamHalfHour: creamHalfHour / untreated,
}
