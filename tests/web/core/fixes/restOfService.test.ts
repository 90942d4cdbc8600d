import { describe, expect, it } from "vitest"
import { newsSince, restOfService } from "../../../../web/core/fixes/restOfService"
import { foilsAlike, timedService } from "../../../support/timedService"

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
