import type { HairlinePlace, TechniqueParting } from "../../../geometry/placing/technique"
import type { TechniqueSection } from "../../../presets/techniques/technique"

/** Sections of a technique that lie one behind the other on one side of the head or over its middle, the foremost first. */
export type Lane = readonly TechniqueSection[]

/** A parting whose middle lies nearer to the middle of the head than this lies over it; in landmarks. */
const overMiddle = 0.2

/** The lanes of a technique. Of a pair only the first: the other follows it. */
export function techniqueRowsOf(sections: readonly TechniqueSection[]): Lane[] {
  const leaders = sections.filter((section) => leaderOf(section, sections) === section)
  const sideOf = ({ parting }: TechniqueSection) => {
    const middle = meanOf(spotsOf(parting).map(({ landmark }) => landmark))
    return Math.abs(middle) < overMiddle ? 0 : Math.sign(middle)
  }
  return [-1, 0, 1]
    .map((side) => leaders.filter((section) => sideOf(section) === side))
    .filter((lane) => lane.length > 0)
    .map((lane) => lane.toSorted((a, b) => farBehind(a) - farBehind(b)))
}

/** The first of the pair that a section belongs to; itself when it is none. */
export const leaderOf = (section: TechniqueSection, sections: readonly TechniqueSection[]) =>
  section.pair === undefined ? section : (sections.find(({ pair }) => pair === section.pair) ?? section)

/** Hair left between each two of a lane, mm; null where two are not parallel. */
export const gapsOf = (lane: Lane): (number | null)[] =>
  lane.slice(1).map((section, i) => {
    const apartMm = apart(lane[i].parting, section.parting)
    return apartMm === null ? null : apartMm - betweenMm(lane[i], section)
  })

/** How much of the way from one parting to the next is hair of the two: each takes what is in front of it or behind. */
const betweenMm = (fore: TechniqueSection, back: TechniqueSection) =>
  (fore.taken === "behind" ? deepest(fore) : 0) + (back.taken === "front" ? deepest(back) : 0)

export const deepest = ({ depthMm }: TechniqueSection) => Math.max(depthMm.start, depthMm.end)

export const spotsOf = (parting: TechniqueParting): readonly HairlinePlace[] =>
  parting.run === "through" ? parting.spots : [parting.from, parting.to]

/** The same parting so many mm farther behind the hairline. */
export function pushedBack(parting: TechniqueParting, mm: number): TechniqueParting {
  const pushed = (spot: HairlinePlace): HairlinePlace => ({ ...spot, behindMm: spot.behindMm + mm })
  if (mm === 0) return parting
  return parting.run === "through"
    ? { ...parting, spots: parting.spots.map(pushed) }
    : { ...parting, from: pushed(parting.from), to: pushed(parting.to) }
}

/** Partings that keep their distance to within this are parallel, mm. */
const straysMm = 1.5

/** How far a parting lies behind another all the way; null when it is not the same all the way. */
function apart(fore: TechniqueParting, back: TechniqueParting): number | null {
  const apartMm = spotsOf(back).flatMap(({ landmark, behindMm }) => {
    const before = behindAt(spotsOf(fore), landmark)
    return before === null ? [] : [behindMm - before]
  })
  const isParallel = apartMm.length > 1 && Math.max(...apartMm) - Math.min(...apartMm) <= straysMm
  return isParallel ? meanOf(apartMm) : null
}

/** How far behind the hairline a parting runs at a landmark; null where it does not come. */
function behindAt(spots: readonly HairlinePlace[], landmark: number): number | null {
  for (const [i, to] of spots.slice(1).entries()) {
    const from = spots[i]
    const [low, high] = [from.landmark, to.landmark].toSorted((a, b) => a - b)
    if (landmark < low - 0.05 || landmark > high + 0.05) continue
    const share = high > low ? (landmark - from.landmark) / (to.landmark - from.landmark) : 0
    return from.behindMm + (to.behindMm - from.behindMm) * Math.max(0, Math.min(1, share))
  }
  return null
}

const farBehind = ({ parting }: TechniqueSection) => meanOf(spotsOf(parting).map(({ behindMm }) => behindMm))
const meanOf = (numbers: readonly number[]) => numbers.reduce((sum, each) => sum + each, 0) / numbers.length
