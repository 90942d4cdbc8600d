import type { LandmarkMove } from "../../../geometry/scalp/landmarkMoves"
import type { SidedLandmark } from "../../../geometry/scalp/nearestLandmark"
import type { Sides } from "../document/hairlineMoves"
import type { Plan } from "../document/schema"

/** A landmark with the sides it is meant on: "temple, both sides", "left temple", "centre front". */
export function landmarkTitle({ name }: Pick<SidedLandmark, "name">, sides: Sides): string {
  if (name.startsWith("centre")) return name
  return sides === "both" ? `${name}, both sides` : `${sides} ${name}`
}

/** How far a landmark is from where the form has it. */
export function moveWords(move: LandmarkMove | undefined): string {
  const parts = [
    told(move?.behindMm ?? 0, "into the hair", "out of the hair"),
    told(move?.towardNapeMm ?? 0, "toward the nape", "toward the forehead"),
  ].filter((part) => part !== "")
  return parts.join(", ") || "as the form"
}

const told = (mm: number, onward: string, back: string) =>
  mm === 0 ? "" : `${Number(Math.abs(mm).toFixed(1))} mm ${mm > 0 ? onward : back}`

/** The parting worn and the crown whorl in a few words, for the sheet, where both are drawn to scale; empty when neither is known. */
export const wornWords = ({ wornParting, whorl }: Plan["head"]): string =>
  [wornParting && partingWords(wornParting), whorl && whorlWords(whorl)].filter(Boolean).join(", ")

function partingWords(worn: NonNullable<Plan["head"]["wornParting"]>): string {
  switch (worn.kind) {
    case "centre":
      return "parted in the middle"
    case "side":
      return `parted ${worn.side}`
    case "zigzag":
      return "zigzag parting"
    case "none":
      return "no parting worn"
  }
}

const whorlWords = ({ turns }: NonNullable<Plan["head"]["whorl"]>) =>
  turns === "none" ? "no whorl" : `whorl ${turns}`
