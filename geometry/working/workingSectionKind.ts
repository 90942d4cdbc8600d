import { alongMm } from "../placing/technique"
import type { Head } from "../scalp/head"
import { mapArea } from "./workingSectionFaces"
import type { DividedArea } from "./workingSections"

/** What the trade calls an area of the divided scalp, by where it lies; in the usual order of working. */
export const workingKinds = [
  "triangle",
  "frame",
  "front",
  "top",
  "side",
  "crown",
  "behind",
  "around",
  "back",
] as const
export type WorkingKind = (typeof workingKinds)[number]
export type WorkingSide = "right" | "centre" | "left"

/** How lopsided an area may lie about the middle, as a share of its width, and still be of the centre. */
const centred = 0.35
/** Of the box round it a triangle fills half, what is rounder fills more. */
const triangleShare = 0.62
/** Radians from the crown: a face frame stays farther from it, a back comes no farther in front of it. */
const frameStays = 0.45
const backReach = 0.25
/** A border counts from so many mm past a landmark. */
const pastMm = 8

/** The kind of an area and the side of the head it lies on; a rule of this program, the trade has none in print. */
export function workingKindOf(area: DividedArea, head: Head): { kind: WorkingKind; side: WorkingSide } {
  const side = sideOf(area)
  return { kind: kindOf(area, side, head), side }
}

function sideOf({ low, high }: DividedArea): WorkingSide {
  const lean = (low[0] + high[0]) / (high[0] - low[0])
  if (Math.abs(lean) < centred) return "centre"
  return lean > 0 ? "right" : "left"
}

function kindOf(area: DividedArea, side: WorkingSide, head: Head): WorkingKind {
  const border = borderOf(area, head)
  const earMm = alongMm(head, 4)
  const isFront = border.nearMm < earMm - pastMm
  const isBack = border.farMm > earMm + pastMm
  if (isFront && isBack) return side === "centre" ? centreKind(area, border.nearMm, head) : "side"
  if (isFront) return frontKind(area, border.farMm, side, head)
  if (isBack) return area.high[1] > backReach ? "behind" : "back"
  return area.low[1] + area.high[1] > 0 ? "top" : "crown"
}

const centreKind = (area: DividedArea, nearMm: number, head: Head): WorkingKind => {
  if (nearMm < alongMm(head, 2)) return "around"
  return area.high[1] > backReach ? "behind" : "back"
}

function frontKind(area: DividedArea, farMm: number, side: WorkingSide, head: Head): WorkingKind {
  if (farMm <= alongMm(head, 1) + pastMm && (side !== "centre" || fills(area) < triangleShare))
    return "triangle"
  if (side === "centre" && farMm <= alongMm(head, 2)) return fills(area) < triangleShare ? "triangle" : "top"
  return crownGap(area) > frameStays ? "frame" : "front"
}

const fills = ({ ring, low, high }: DividedArea) =>
  Math.abs(mapArea(ring)) / ((high[0] - low[0]) * (high[1] - low[1]))

const crownGap = ({ ring }: DividedArea) => Math.min(...ring.map(([u, v]) => Math.hypot(u, v)))

const looks = 32

/** How near to centre front and how far round an area borders the hairline, mm on either side. */
function borderOf({ edges }: DividedArea, { hairline: { lengthMm } }: Head) {
  const places = edges.flatMap(({ fromMm, toMm }) =>
    Array.from({ length: looks + 1 }, (_, i) => {
      const along = (fromMm + ((toMm - fromMm) * i) / looks) % lengthMm
      return Math.min(along, lengthMm - along)
    }),
  )
  return { nearMm: Math.min(Infinity, ...places), farMm: Math.max(-Infinity, ...places) }
}
