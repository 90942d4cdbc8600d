import { type Foil, isFoil, rootsOf, type Section } from "../../../geometry/section/section"
import { rootDistanceMm } from "../../../presets/placement/foils"
import { usualGapMm } from "../../../presets/placement/stacking"
import { validateEdit } from "../checks/validateEdit"
import { type Edit, isRefusal, refuse } from "../document/edit"
import { withKnownMixes } from "../document/newSection"
import type { Plan } from "../document/schema"
import { movedBack } from "../edits/parting/moveSections"
import { leastStrandShare } from "../fields/limits"
import { headOf } from "../figures/measured"
import { saidPiece } from "../kinds/saidPiece"
import { coatedTwice } from "./coatedTwice"
import { growthSince, isOfFoil, startMm } from "./lightened"
import { type OldFoil, oldFoils } from "./sectionStates"
import { strandLengthCm } from "./strandLength"

/** What is done this time with a foil of the last time. */
export const regrowthActions = ["root", "behind", "before", "keep", "skip"] as const
export type RegrowthAction = (typeof regrowthActions)[number]

/** What is proposed where nobody says otherwise: new growth alone where it is due, and nothing else. */
export const proposedFor = ({ state }: OldFoil): RegrowthAction => (state === "due" ? "root" : "skip")

/** Does with foils of the last time what is said; each takes its place again, or leaves it. */
export const regrow =
  (ids: readonly string[], action: RegrowthAction): Edit =>
  (plan) => {
    let made = plan
    for (const old of oldFoils(plan).filter(({ lightened }) => ids.includes(lightened.section.id))) {
      const section = sectionFor(old, action, plan)
      if (section === "no-room")
        return refuse({
          code: "no-new-growth",
          foil: old.lightened.section.mapNumber,
          ...saidPiece([old.lightened.section]),
        })
      made = { ...made, sections: placed(made.sections, old.lightened.section, section) }
    }
    return validateEdit(plan, made)
  }

/** Every foil of the last time as it is proposed; the others stay as they are drawn. Product goes on no hair that was lightened. */
export const proposeRegrowth: Edit = (plan) => {
  let made: Plan = plan
  for (const old of oldFoils(plan)) {
    const id = old.lightened.section.id
    const next = regrow([id], proposedFor(old))(made)
    // Where the root cannot be coated alone nothing is proposed.
    const kept =
      isRefusal(next) || coatedTwice(next).some(({ foil }) => foil.id === id)
        ? regrow([id], "skip")(made)
        : next
    if (isRefusal(kept)) return kept
    made = kept
  }
  return made
}

function sectionFor(old: OldFoil, action: RegrowthAction, plan: Plan): Foil | "no-room" | null {
  const was = drawnAnew(old.lightened.section, plan)
  switch (action) {
    case "skip":
      return null
    case "keep":
      return was
    case "root":
      return rootAlone(was, plan) ?? "no-room"
    case "behind":
    case "before": {
      const mm = (action === "behind" ? 0.5 : -0.5) * pitchMm(was)
      return { ...was, parting: movedBack(headOf(plan), was.parting, mm) }
    }
  }
}

/** As it was drawn, for a plan whose mixes may have changed; its twin is done for itself. */
const drawnAnew = (foil: Foil, { mixes }: Plan): Foil => ({
  ...withKnownMixes(foil, mixes),
  twin: undefined,
})

/** From one parting to the next as foils are laid, mm. */
const pitchMm = ({ depthMm }: Foil) => Math.max(depthMm.start, depthMm.end) + usualGapMm.value

/**
 * New growth alone, in the mix that was on the roots: as near to the scalp as regrowth is begun, and no farther than where the nearest lightened hair in the
 * foil may begin, on its longest strand. Null where there is no such room.
 */
export function rootAlone(foil: Foil, plan: Plan): Foil | null {
  const { least, most } = strandLengthCm(foil, plan)
  const roots = rootsOf(foil)
  const whole = {
    ...foil,
    ...(roots && { mix: roots.mix, roots: undefined }),
    strand: { from: 0, to: 1 },
  }
  const met = new Set(coatedTwice({ ...plan, sections: [whole] }).map(({ lightened }) => lightened))
  const limits = (plan.lightened ?? [])
    .filter(isOfFoil)
    .filter((lightened) => lightened.section.id === foil.id || met.has(lightened))
    .map(
      ({ section, on }) =>
        startMm(section, strandLengthCm(section, plan).least) + growthSince(plan, on).lowMm,
    )
  const to = floorShare(Math.min(...limits, 10 * most) / (10 * most))
  const start = Math.min(foil.rootDistanceMm, rootDistanceMm.regrowth.value)
  const root = { ...whole, rootDistanceMm: start, strand: { from: 0, to } }
  return to < leastStrandShare || startMm(root, most) >= 10 * least * to ? null : root
}

/** A share as a file keeps it, never rounded up. */
const floorShare = (share: number) => Math.floor(share * 1000) / 1000

/** In the place the foil had, or at the end of the order. */
function placed(sections: readonly Section[], was: Foil, next: Foil | null): readonly Section[] {
  const stands = sections.some(({ id }) => id === was.id)
  if (next === null) return sections.filter(({ id }) => id !== was.id)
  if (stands) return sections.map((section) => (section.id === was.id ? next : section))
  const taken = new Set(sections.filter(isFoil).map(({ mapNumber }) => mapNumber))
  const free = taken.has(next.mapNumber) ? Math.max(0, ...taken) + 1 : next.mapNumber
  return [...sections, { ...next, mapNumber: free }]
}
