import { describe, expect, it } from "vitest"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { clockChart } from "../../../../web/sheets/map/clockChart"
import { clockRowMm } from "../../../../web/sheets/map/clockRow"
import type { Item } from "../../../../web/sheets/pens/page"
import { framePlan } from "../../../support/framePlan"
import { emptyPlan } from "../../../support/samples"
import { british } from "../../../support/sheetFonts"

const clock = clockChart(framePlan, 194, british)
if (!clock) throw new Error("the frame has foils")
const words = (items: readonly Item[]) => items.flatMap((item) => (item.kind === "text" ? [item.text] : []))

describe("the clock on paper", () => {
  it("is left off a plan without foils", () => expect(clockChart(emptyPlan, 194, british)).toBeNull())

  // Foils every 2 minutes from minute 4, ready from 18 to 34 minutes on (common practice), at the hairline from 12.6.
  it("gives each foil in its order: number, on, ready and the minute never to pass", () => {
    const timed = timedPlan(framePlan)
    if (!timed.ok) throw new Error(timed.problems.join(" "))
    expect(clock.rows.length).toBe(timed.schedule.foils.length)
    expect(words(clock.rows[0].items).slice(0, 3)).toEqual(["1", "4", "17–38"])
    for (const [i, { limitAtMin }] of timed.schedule.foils.entries())
      expect(words(clock.rows[i].items)[3]).toBe(String(Math.round(limitAtMin)))
  })

  it("says in words when somebody rests", () => {
    const breaks = [{ fromMin: 8, toMin: 20 }]
    const rested = clockChart({ ...framePlan, timing: { ...usualTiming, breaks } }, 194, british)
    expect(words(rested?.key.items ?? []).join(" ")).toContain("Break from minute 8 to 20.")
    expect(words(clock.key.items).join(" ")).not.toContain("Break")
  })

  it("marks every bowl by its letter", () =>
    expect(words(clock.head.items)).toEqual(expect.arrayContaining(["A", "B"])))

  it("keeps hatches inside their bars and every row of one height", () => {
    for (const { items, heightMm } of clock.rows) {
      expect(heightMm).toBe(clockRowMm)
      expect(items.filter(({ kind }) => kind === "hatch")).toEqual([])
    }
  })
})
