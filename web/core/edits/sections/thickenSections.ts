import type { Edit } from "../../document/edit"
import { limits } from "../../fields/limits"
import { replaceSections } from "./replaceSections"

/** Makes sections deeper by so many mm, or thinner when it is negative, no further than a plan can hold. */
export const thickenSections = (ids: readonly string[], byMm: number): Edit =>
  replaceSections(ids, (section) => ({
    ...section,
    depthMm: { start: within(section.depthMm.start + byMm), end: within(section.depthMm.end + byMm) },
  }))

const within = (depthMm: number) => Math.min(limits.depthMm.high, Math.max(limits.depthMm.low, depthMm))
