import type { HairHistory, StrandPart, Zone } from "../document/consultation"

/** What the parts of a head and of a strand are called, and what hair has been through. */

export const zoneWords: Record<Zone, string> = {
  hairline: "Hairline",
  top: "Top",
  left: "Left side",
  right: "Right side",
  back: "Back",
}
export const partWords: Record<StrandPart, string> = {
  roots: "Roots",
  midLengths: "Mid-lengths",
  ends: "Ends",
}
export const historyWords: Record<HairHistory, string> = {
  coloured: "Coloured",
  lightened: "Lightened",
  permed: "Permed",
  relaxed: "Relaxed",
  henna: "Henna",
  "metallic-salts": "Metallic salts or compound henna",
}
