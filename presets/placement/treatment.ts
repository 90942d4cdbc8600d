import type { Treatment } from "../../geometry/section/section"
import { usualElevationDeg } from "../plans/startingPlan"
import { rootDistanceMm, usualFoil } from "./foils"

/** How a foil's worth of hair is held, coated and wrapped where nobody says otherwise. */
export const usualTreatment: Omit<Treatment, "mapNumber" | "mix" | "name"> = {
  rootDistanceMm: rootDistanceMm.standard.value,
  strand: { from: 0, to: 1 },
  faces: 2,
  carrier: { kind: "foil", widthMm: usualFoil.widthMm, lengthMm: usualFoil.lengthMm },
  elevationDeg: usualElevationDeg.value,
  overDirectionDeg: 0,
  foilLie: "down",
}
