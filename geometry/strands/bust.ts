import { add, ellipsoid, type Field, paired, rod, sculpt } from "../scalp/fields"
import { distanceTable } from "./distanceTable"
import type { Feel } from "./feel"

/** Neck, shoulders and chest below the unscaled head, mm: what long hair falls on. Modelled by eye, soft and sexless. */
export const bustDistance: Field = sculpt(
  rod([0, -13, -90], 46, [0, -34, -215], 50),
  add(paired(rod([28, -44, -196], 30, [146, -38, -240], 44)), 46), // shoulders
  add(ellipsoid([0, -22, -345], [142, 84, 138]), 60), // chest
  add(paired(rod([152, -38, -250], 44, [168, -30, -420], 42)), 24), // arms
)

/** Below this hair feels the shoulders, mm of the unscaled head. */
export const bustFromMm = -125

const look = distanceTable(bustDistance, { low: [0, -176, -440], high: [232, 128, -120], cellMm: 8 })

/** Distance to the bust and the way out of it, by a table of distances; unscaled mm. */
export function feelBust(x: number, y: number, z: number, into: Feel) {
  look(x, y, z, into)
  const length = Math.sqrt(into.x * into.x + into.y * into.y + into.z * into.z) || 1
  into.x /= length
  into.y /= length
  into.z /= length
}
