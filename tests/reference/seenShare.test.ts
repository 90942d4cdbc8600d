import { describe, expect, it } from "vitest"
import { makeHeadFromAxes } from "../../geometry/scalp/head"
import { pointsEach, type Strands } from "../../geometry/strands/grow"
import { headDistanceTable } from "../../geometry/strands/headDistance"
import type { Lightened } from "../../geometry/strands/lightened"
import { seenShare } from "../../geometry/strands/seenShare"
import { surfacePoint } from "../../geometry/surface/frames"
import { makeDice } from "../support/dice"

/**
 * The share of light round the face against brute force on a small case: a few straight strands before the head, every
 * square of the page asked by itself which of all of them is nearest, and the head felt along its line of sight in
 * steps of a fifth of a millimetre.
 */
const head = makeHeadFromAxes([1, 1, 1], "round")
const aroundFaceMm = 60

type Strand = {
  from: readonly [number, number, number]
  to: readonly [number, number, number]
  light: boolean
}

/** Some hang down beside the face, some lie before others, some are behind the head. */
function drawStrands(count: number): Strand[] {
  const { even } = makeDice(77)
  const between = (low: number, high: number) => low + (high - low) * even()
  return Array.from({ length: count }, (_, i) => {
    const side = i % 2 ? 1 : -1
    const x = side * between(40, 95)
    const [z, y] = [between(40, 100), i % 5 === 0 ? between(-120, -90) : between(60, 110)]
    return {
      from: [x, y, z],
      to: [x + between(-25, 25), y + between(-15, 15), z - between(60, 120)],
      light: even() < (side > 0 ? 0.7 : 0.3),
    }
  })
}

const all = drawStrands(60)

function asStrands(list: readonly Strand[]): { strands: Strands; light: Lightened } {
  const points = new Float32Array(3 * pointsEach * list.length)
  const lengthsMm = new Float32Array(list.length)
  list.forEach(({ from, to }, i) => {
    lengthsMm[i] = Math.hypot(...to.map((end, k) => end - from[k]))
    for (let p = 0; p < pointsEach; p++)
      for (let k = 0; k < 3; k++)
        points[3 * (i * pointsEach + p) + k] = from[k] + ((to[k] - from[k]) * p) / (pointsEach - 1)
  })
  const light = {
    fromMm: new Float32Array(list.length),
    toMm: lengthsMm.map((mm) => mm + 1),
    by: Int16Array.from(list, ({ light }) => (light ? 0 : -1)),
  }
  const roots = list.map(() => surfacePoint(0, 0))
  return { strands: { count: list.length, hairsEach: 1, points, lengthsMm, roots }, light }
}

/** The page square by square: x and z of its middle. */
function bruteForce(list: readonly Strand[]) {
  const face = faceLine()
  const nearest = new Map<string, { y: number; light: boolean }>()
  for (const { from, to, light } of list) {
    const steps = Math.ceil(Math.hypot(...to.map((end, k) => end - from[k])) / 0.05)
    for (let s = 0; s < steps; s++) {
      const [x, y, z] = from.map((start, k) => start + ((to[k] - start) * (s + 0.5)) / steps)
      const square = `${Math.floor(x)} ${Math.floor(z)}`
      const before = nearest.get(square)
      if (!before || y > before.y) nearest.set(square, { y, light })
    }
  }
  const seen = { left: [0, 0], right: [0, 0] }
  for (const [square, { y, light }] of nearest) {
    const [x, z] = square.split(" ").map((edge) => Number(edge) + 0.5)
    if (face.every(([faceX, faceZ]) => Math.hypot(x - faceX, z - faceZ) > aroundFaceMm)) continue
    if (headFront(x, z) > y) continue
    const side = seen[x < 0 ? "left" : "right"]
    side[0] += 1
    if (light) side[1] += 1
  }
  return {
    left: seen.left[1] / seen.left[0],
    right: seen.right[1] / seen.right[0],
    squares: seen.left[0] + seen.right[0],
  }
}

const body = headDistanceTable(head.axes)

/** How far forward the head reaches at a place on the page, felt in steps of a fifth of a millimetre. */
function headFront(x: number, z: number): number {
  const feel = { mm: 0, x: 0, y: 0, z: 0 }
  for (let y = 135; y > -110; y -= 0.2) {
    body.feel(x, y, z, feel)
    if (feel.mm <= 0) return y
  }
  return Number.NEGATIVE_INFINITY
}

/** The hairline of the face on the page, a place a millimetre. */
function faceLine(): readonly (readonly [number, number])[] {
  const { left, right } = head.hairline.sides
  const line: [number, number][] = []
  for (let mm = -left.faceReachMm; mm <= right.faceReachMm; mm++) {
    const [x, , z] = head.surface.pointAt(head.hairline.pointAlong(mm))
    line.push([x, z])
  }
  return line
}

describe("the share of light hair round the face", () => {
  it("is what brute force counts, to 3 in 100, on the left and on the right", () => {
    const { strands, light } = asStrands(all)
    const counted = bruteForce(all)
    const shares = seenShare(head, strands, light, aroundFaceMm)
    expect(counted.squares).toBeGreaterThan(1000)
    expect(counted.left).toBeLessThan(0.6)
    expect(counted.right).toBeGreaterThan(0.4)
    expect(Math.abs(shares.left - counted.left)).toBeLessThan(0.03)
    expect(Math.abs(shares.right - counted.right)).toBeLessThan(0.03)
  })

  it("sees none of the strands behind the head, as brute force does not", () => {
    const behind = all.map(
      ({ from, to, light }): Strand => ({
        from: [from[0] / 3, -100, from[2]],
        to: [to[0] / 3, -100, from[2] - 20],
        light,
      }),
    )
    const { strands, light } = asStrands(behind)
    expect(seenShare(head, strands, light, aroundFaceMm)).toEqual({ left: 0, right: 0 })
    expect(bruteForce(behind).squares).toBe(0)
  })
})
