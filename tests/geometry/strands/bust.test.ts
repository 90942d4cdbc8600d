import { expect, it } from "vitest"
import { bustDistance, feelBust } from "../../../geometry/strands/bust"
import type { Feel } from "../../../geometry/strands/feel"

const feel: Feel = { mm: 0, x: 0, y: 0, z: 0 }

it("has a neck that widens into shoulders, the same on both sides", () => {
  expect(bustDistance(60, -30, -150)).toBeGreaterThan(0)
  expect(bustDistance(130, -38, -230)).toBeLessThan(0)
  expect(bustDistance(-130, -38, -230)).toBe(bustDistance(130, -38, -230))
})

it("is felt by its table as the shape is, within a millimetre and a half near the skin, and outward", () => {
  for (const x of [-120, -40, 25, 90, 150])
    for (const y of [-70, -20, 50])
      for (const z of [-170, -215, -260, -330]) {
        const exact = bustDistance(x, y, z)
        if (Math.abs(exact) > 25) continue
        feelBust(x, y, z, feel)
        expect(Math.abs(feel.mm - exact)).toBeLessThan(1.5)
        const farther = bustDistance(x + 2 * feel.x, y + 2 * feel.y, z + 2 * feel.z)
        expect(farther).toBeGreaterThan(exact)
      }
})
