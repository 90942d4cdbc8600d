import { type ViewPoint, viewPoint } from "../../../geometry/surface/frames"
import { type LabelRing, placeLabels } from "../../drawing/labels"

/** Something to be written beside a drawing: what it points to (mm of the view), and its size in mm of paper. */
export type Name = { anchor: ViewPoint; widthMm: number; heightMm: number }

/** A name takes as many of these along the ring as its size there asks for, mm of paper. */
const slotMm = 3
const apartMm = 2.2
/** Half the width of a number: what is wider stands further out at the sides of the ring. */
const numberMm = 3.4

/** The distance of a second ring outside the first, mm of paper, for names that the first cannot hold. */
export const ringsApartMm = 7.5

export type Rings = { ring: LabelRing; count: 1 | 2; scale: number }

/** Where to centre names round a drawing (view mm) so that none covers another and no leader crosses another. */
export function placeNames(names: readonly Name[], rings: Rings): ViewPoint[] {
  const anchors = names.map(({ anchor }) => anchor)
  const slots = needs(names, placeInRow(names, needs(names, anchors, rings), rings), rings)
  const places = uncross(names, slots, placeInRow(names, slots, rings))
  return places.map((place, i) => moveOut(place, outMm(names[i], place, places, rings), rings))
}

/** How many slots of the ring each name needs at a place: much where the ring runs across, little where it runs up. */
function needs(names: readonly Name[], places: readonly ViewPoint[], { ring, count }: Rings): number[] {
  return names.map(({ widthMm, heightMm }, i) => {
    const [outX, outY] = outward(places[i], ring)
    return Math.ceil((Math.abs(outY) * widthMm + Math.abs(outX) * heightMm + apartMm) / slotMm / count)
  })
}

/** Each name in the middle of its slots on the inner ring. */
function placeInRow(names: readonly Name[], slots: readonly number[], { ring, scale }: Rings): ViewPoint[] {
  const anchors = names.flatMap(({ anchor }, i) => new Array<ViewPoint>(slots[i]).fill(anchor))
  const places = placeLabels(anchors, ring, slotMm / scale)
  let before = 0
  return slots.map((count) => {
    const [first, last] = [places[before], places[before + count - 1]]
    before += count
    return viewPoint((first[0] + last[0]) / 2, (first[1] + last[1]) / 2)
  })
}

/** How far out of the inner ring a name stands, mm of paper: a wide one at the sides, and every other one of a crowd. */
function outMm(
  { widthMm }: Name,
  place: ViewPoint,
  places: readonly ViewPoint[],
  { ring, count }: Rings,
): number {
  const [outX] = outward(place, ring)
  const wideMm = Math.abs(outX) * Math.max(0, widthMm / 2 - numberMm)
  if (count === 1) return wideMm
  const rank = places.filter((other) => angleOf(other, ring) < angleOf(place, ring)).length
  return wideMm + (rank % 2) * ringsApartMm
}

const angleOf = (place: ViewPoint, ring: LabelRing) => Math.atan2(...outward(place, ring))

/** The unit vector away from the ring's middle, as if the ring were round. */
function outward([x, y]: ViewPoint, { centre, halfWidthMm, halfHeightMm }: LabelRing) {
  const [outX, outY] = [(x - centre[0]) / halfWidthMm, (y - centre[1]) / halfHeightMm]
  const reach = Math.hypot(outX, outY) || 1
  return [outX / reach, outY / reach] as const
}

function moveOut(place: ViewPoint, byMm: number, { ring, scale }: Rings): ViewPoint {
  const [outX, outY] = outward(place, ring)
  return viewPoint(place[0] + (outX * byMm) / scale, place[1] + (outY * byMm) / scale)
}

/** The same places dealt out anew: names that take equal room change places while that shortens their leaders. */
function uncross(
  names: readonly Name[],
  slots: readonly number[],
  places: readonly ViewPoint[],
): ViewPoint[] {
  const leadersMm = names.map(({ anchor }) =>
    Float64Array.from(places, ([x, y]) => Math.hypot(x - anchor[0], y - anchor[1])),
  )
  /** Which of the places each name has. */
  const dealt = places.map((_, i) => i)
  const gainMm = (i: number, j: number) =>
    leadersMm[i][dealt[i]] + leadersMm[j][dealt[j]] - leadersMm[i][dealt[j]] - leadersMm[j][dealt[i]]
  const pairs = slots.flatMap((count, i) =>
    slots.flatMap((other, j) => (j > i && other === count ? [[i, j] as const] : [])),
  )
  const crossed = () => pairs.find(([i, j]) => gainMm(i, j) > 1e-6)
  for (let pair = crossed(); pair; pair = crossed()) {
    const [i, j] = pair
    ;[dealt[i], dealt[j]] = [dealt[j], dealt[i]]
  }
  return dealt.map((place) => places[place])
}
