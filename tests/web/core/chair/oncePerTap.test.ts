import { expect, it } from "vitest"
import type { Chair } from "../../../../web/core/chair/chair"
import { passTime, startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { oncePerTap } from "../../../../web/core/chair/oncePerTap"

const at = (seconds: number) => ({ load: "l", monotonicMs: 1000 * seconds, wallMs: 1e12 + 1000 * seconds })
const foils = [{ id: "a", mapNumber: 1, limitMin: 45, firstLookMin: 10 }]

it("works a thing out once for each tap, and anew where the plan under it has changed", () => {
  let runs = 0
  const worked = oncePerTap((chair: Chair) => {
    runs += 1
    return chair.foils.length
  })
  const chair = startChair(foils, at(0))
  worked(chair)
  worked(passTime(chair, at(1)).chair)
  expect(runs).toBe(1)
  const tapped = tapChair(chair, { kind: "on", foil: "a" }, { at: at(2), revision: 0 }).chair
  worked(tapped)
  expect(runs).toBe(2)
  worked({ ...tapped, heatMin: 5 })
  expect(worked({ ...tapped, foils: [] })).toBe(0)
  worked({ ...tapped, bowls: [{ mix: "A", foils: ["a"], potLifeMin: 30 }] })
  expect(runs).toBe(5)
})
