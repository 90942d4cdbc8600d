import { describe, expect, it } from "vitest"
import { restOfService, withNews } from "../../../web/service/restOfService"
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
  it("keeps every part that says what was known before", () => {
    const before = restOfService(service, soFar(4, { f1: 2 }))
    const later = withNews(before, restOfService(service, soFar(4.2, { f1: 2 })))
    expect(later.onAtMin).toEqual({ f2: 4.2 })
    expect(later.offAtMin).toBe(before.offAtMin)
    expect(later.bowls).toBe(before.bowls)
    expect(withNews(null, before)).toBe(before)
    expect(withNews(before, structuredClone(before))).toBe(before)
  })
})
