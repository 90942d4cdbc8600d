import { levelsIfUnknown } from "../../../presets/pigment/pigmentByLevel"
import {
  type Consultation,
  type FinishTone,
  newConsultation,
  type StrandPart,
  strandParts,
  type Zone,
  zoneNames,
} from "../document/consultation"
import type { Plan } from "../document/schema"

/** What a plan's hair is drawn in: levels as they are told, and where they are not, what stands in for them. */
export type Shades = {
  now: Record<Zone, Record<StrandPart, number>>
  aimed: number
  finish: FinishTone | null
  whiteShare: number
  /** What is not told and has been drawn by an assumption. */
  assumed: { now: number | null; aimed: number | null }
}

export function shadesOfPlan({ consultation }: Pick<Plan, "consultation">): Shades {
  const known = consultation ?? newConsultation()
  const told = zoneNames.flatMap((zone) => strandParts.flatMap((part) => levelAt(known, zone, part) ?? []))
  const usual =
    told.length > 0 ? told.reduce((sum, level) => sum + level, 0) / told.length : levelsIfUnknown.now
  const ofZone = (zone: Zone) => {
    const parts = strandParts.map((part) => levelAt(known, zone, part))
    const first = parts.find((level) => level !== null) ?? usual
    return Object.fromEntries(
      strandParts.map((part, i) => [part, parts[i] ?? parts[i - 1] ?? first]),
    ) as Record<StrandPart, number>
  }
  return {
    now: Object.fromEntries(zoneNames.map((zone) => [zone, ofZone(zone)])) as Shades["now"],
    aimed: known.liftToLevel ?? levelsIfUnknown.aimed,
    finish: known.finish,
    whiteShare: known.greyShare ?? 0,
    assumed: {
      now: told.length > 0 ? null : levelsIfUnknown.now,
      aimed: known.liftToLevel === null ? levelsIfUnknown.aimed : null,
    },
  }
}

const levelAt = ({ hair }: Consultation, zone: Zone, part: StrandPart) => hair[zone]?.[part]?.level ?? null
