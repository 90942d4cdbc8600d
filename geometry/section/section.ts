import type { Painting } from "../painted/painting"
import type { SurfacePoint } from "../surface/frames"

/** A band of hair: the line it is parted along, the side it is taken from, how deep it goes. Lengths mm on the scalp. */
export type Band = {
  id: string
  /** The parting, from its first point to its last, on the scalp map. */
  parting: readonly SurfacePoint[]
  /** Whether the hair taken lies in front of the parting (toward the face) or behind it. */
  taken: "front" | "behind"
  depthMm: { start: number; end: number }
  /** Said of hair that may lie in two working sections. */
  mayCross?: true | undefined
  note: string
  /** The id of its mirror image on the other side of the head, with which it makes a pair. */
  twin?: string | undefined
}

/** How a foil's worth of hair is held, coated and wrapped. */
export type Treatment = {
  /** The number printed on the map. The order of application is the order of the list, another thing. */
  mapNumber: number
  /** What it is called beside its number. */
  name?: string | undefined
  /** Where product begins, mm from the scalp. */
  rootDistanceMm: number
  /** Which part of the strand is coated: shares of its length, 0 at the root, 1 at the ends. */
  strand: { from: number; to: number }
  /** Faces of the strand coated: 2 for foils, 1 for painted work. */
  faces: 1 | 2
  carrier: { kind: CarrierKind; widthMm: number; lengthMm: number }
  /** Angle at which the section is held from the head, and how far it is combed off its base. */
  elevationDeg: number
  overDirectionDeg: number
  foilLie: FoilLie
  mix: string
}
/** Another mix on the roots of a foil; its own goes on from there to the ends. */
export type Rooted = { roots?: RootCoat | undefined }
/** A mix from where product begins to so far along the strand, mm from the scalp, and which of the two goes on first. */
export type RootCoat = {
  mix: string
  toMm: number
  first: "ends" | "roots"
  /** Minutes after the ends, where the foil is opened for them again; none or 0 where both go on in one visit. */
  afterMin?: number | undefined
}
export type CarrierKind = "foil" | "board" | "open-air" | "film"
export type FoilLie = "down" | "up" | "toward-face" | "away-from-face"

/** A row of stitches picked out of the band: their width, the gap between, how deep the tail of the comb dips. */
export type Stitching = { stitchMm: number; gapMm: number; dipMm: number }

/** A slice or a weave of which a share is pushed to the root, where it makes a cushion and stays uncoated. */
export type Backcombing = { base: "slice" | "weave"; pushedShare: number; cushionMm: number }

/** What some kinds have beside their band and treatment, by group. */
export type KindValues = { stitching: Stitching; backcombing: Backcombing; painting: Painting }

type Kinds = {
  slice: Treatment & Rooted
  weave: Treatment & Rooted & Stitching
  backcomb: Treatment & Stitching & Backcombing
  /** A panel laid flat and painted on its face, in the open air or under film. */
  painted: Treatment & { painting: Painting }
  /** Hair left alone on purpose. */
  "left-out": { name: string }
}

export type SectionKind = keyof Kinds
export type Section<K extends SectionKind = SectionKind> = { [P in K]: { kind: P } & Band & Kinds[P] }[K]
export type FoilKind = Exclude<SectionKind, "left-out">
/** A section that is coated: anything but hair left out. */
export type Foil = Section<FoilKind>

export const isFoil = (section: Section): section is Foil => section.kind !== "left-out"

/** What is on the roots of a foil, where that is another mix; never of a kind that has no roots to coat apart. */
export const rootsOf = (foil: Foil): RootCoat | undefined => ("roots" in foil ? foil.roots : undefined)

/** Which stretch of a strand a mix is on. */
export type CoatPart = "whole" | "ends" | "roots"
export type Coated = { mix: string; roots?: Pick<RootCoat, "mix" | "first"> | undefined }

/** Minutes from the ends to the roots; 0 where both go on in one visit. */
export const rootsAfterMin = (roots: Pick<RootCoat, "first" | "afterMin"> | undefined): number =>
  roots?.first === "ends" ? (roots.afterMin ?? 0) : 0

/** The mixes along a strand in the order they go on. Nothing else asks whether there are two. */
export function coatsOf({ mix, roots }: Coated): { part: CoatPart; mix: string }[] {
  if (!roots) return [{ part: "whole", mix }]
  const both = [
    { part: "ends" as const, mix },
    { part: "roots" as const, mix: roots.mix },
  ]
  return roots.first === "roots" ? both.reverse() : both
}

/** Whether a mix is on any part of a strand. */
export const isCoatedWith = (foil: Coated, mix: string) => foil.mix === mix || foil.roots?.mix === mix
