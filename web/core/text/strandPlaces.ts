import {
  type Consultation,
  type HairState,
  type StrandPart,
  strandParts,
  type Zone,
  zoneNames,
} from "../document/consultation"

/** Which hair is written down at once: one zone or all, one part of the strand or root to ends. */
export type StrandPlace = { zone: Zone | "all"; part: StrandPart | "all" }

type Hair = Consultation["hair"]

const unknownHair: HairState = { level: null, history: null, porosity: null, stretch: null }

const zonesOf = ({ zone }: StrandPlace): readonly Zone[] => (zone === "all" ? zoneNames : [zone])
const partsOf = ({ part }: StrandPlace): readonly StrandPart[] => (part === "all" ? strandParts : [part])

const statesAt = (hair: Hair, place: StrandPlace): HairState[] =>
  zonesOf(place).flatMap((zone) => partsOf(place).map((part) => hair[zone]?.[part] ?? unknownHair))

/** What is the same of all the hair of a place; null where it differs or is not known. */
export function commonState(hair: Hair, place: StrandPlace): HairState {
  const states = statesAt(hair, place)
  const common = <Value>(of: (state: HairState) => Value): Value | null => {
    const [first, ...others] = states.map(of)
    return others.every((value) => JSON.stringify(value) === JSON.stringify(first)) ? first : null
  }
  return {
    level: common(({ level }) => level),
    history: common(({ history }) => history),
    porosity: common(({ porosity }) => porosity),
    stretch: common(({ stretch }) => stretch),
  }
}

/** The hair with every part of a place changed, each from what it was. */
export function changeStrand(hair: Hair, place: StrandPlace, change: (state: HairState) => HairState): Hair {
  const changed = { ...hair }
  for (const zone of zonesOf(place)) {
    const strand = { ...changed[zone] }
    for (const part of partsOf(place)) strand[part] = change(strand[part] ?? unknownHair)
    changed[zone] = strand
  }
  return changed
}

/** Zones whose hair was written down alike, with what was written of it from the root down. */
export function alikeZones(hair: Hair): { zones: readonly Zone[]; strand: NonNullable<Hair[Zone]> }[] {
  const groups = new Map<string, { zones: Zone[]; strand: NonNullable<Hair[Zone]> }>()
  for (const zone of zoneNames) {
    const strand = hair[zone]
    if (!strand) continue
    const key = JSON.stringify(strandParts.map((part) => strand[part] ?? null))
    const group = groups.get(key) ?? { zones: [], strand }
    group.zones.push(zone)
    groups.set(key, group)
  }
  return [...groups.values()]
}
