import { describe, expect, it } from "vitest"
import { newsSince, nextShown, restOfService } from "../../../web/service/restOfService"
import { foilsAlike, timedService } from "../../support/timedService"

// Two foils of a minute and a half each, ready after 26 minutes; nothing else takes time.
const service = timedService(foilsAlike(2))
const soFar = (nowMin: number, onAtMin = {}) => ({ nowMin, onAtMin, offAtMin: {}, mixedAtMin: [] })

describe("the rest of a service", () => {
  it("is planned from now and from what is on", () => {
    const rest = restOfService(service, soFar(4, { f1: 2 }))
    expect([rest.onAtMin, rest.offAtMin]).toEqual([{ f2: 4 }, { f1: 28 }])
    expect([rest.lastOnMin, rest.rinseMin, rest.conflicts]).toEqual([4, 30, []])
  })
  it("tells only the parts that say something else", () => {
    const before = restOfService(service, soFar(4, { f1: 2 }))
    expect(newsSince(null, before)).toBe(before)
    expect(newsSince(before, structuredClone(before))).toEqual({})
    expect(newsSince(before, restOfService(service, soFar(4.2, { f1: 2 })))).toEqual({ onAtMin: { f2: 4.2 } })
  })
})

describe("what is shown of a new plan", () => {
  const allOff = (atMin: number) =>
    Object.fromEntries(Array.from({ length: 20 }, (_, i) => [`f${i}`, atMin - i]))
  const plan = restOfService(service, soFar(4))
  it("is all of it where few foils are moved", () => {
    const shown = { ...plan, offAtMin: { a: 30, b: 31 } }
    const known = { ...plan, rinseMin: 50, offAtMin: { a: 32, b: 33 } }
    expect(nextShown(shown, known)).toBe(known)
  })
  it("is the four soonest foils at a time where it moves many, all else at once", () => {
    const shown = { ...plan, offAtMin: allOff(50) }
    const known = { ...plan, rinseMin: 99, offAtMin: allOff(52) }
    const next = nextShown(shown, known)
    const moved = (rest: typeof plan) =>
      Object.keys(rest.offAtMin).filter((id) => rest.offAtMin[id] === known.offAtMin[id])
    expect(next.rinseMin).toBe(99)
    expect(moved(next)).toEqual(["f16", "f17", "f18", "f19"])
    expect(moved(nextShown(next, known))).toHaveLength(8)
    const inFive = [2, 3, 4, 5].reduce((rest) => nextShown(rest, known), next)
    expect(inFive).toBe(known)
  })
})
