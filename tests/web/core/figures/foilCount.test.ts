import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../geometry/parting/parting"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { extraMin, foilMin } from "../../../../presets/timing/pace"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import { plannedService } from "../../../../web/core/chair/plannedService"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { foilCount, foilsIn } from "../../../../web/core/figures/foilCount"
import { headOf, measured } from "../../../../web/core/figures/measured"
import { doneToday } from "../../../../web/core/record/doneToday"
import { recordFoils } from "../../../../web/core/record/recordFoils"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { aimOf, toolsOf } from "../../../../web/core/teaching/teachingPlan"
import { tableRows } from "../../../../web/sheets/table/tableRows"
import { emptyPlan } from "../../../support/samples"
import { british } from "../../../support/sheetFonts"

const drawn = fc.record({
  kind: fc.constantFrom("slice", "weave", "backcomb", "left-out" as const),
  fromMm: fc.integer({ min: -140, max: 60 }),
  lengthMm: fc.integer({ min: 20, max: 160 }),
  behindMm: fc.integer({ min: 4, max: 70 }),
  carrier: fc.constantFrom(
    { kind: "foil", widthMm: 100, lengthMm: 305 },
    { kind: "foil", widthMm: 127, lengthMm: 150 },
    { kind: "board", widthMm: 127, lengthMm: 305 } as const,
  ),
  mix: fc.constantFrom("A", "B"),
})

/** Sections anywhere, some far longer than a foil is wide, over two mixes. */
const anyPlan = fc.array(drawn, { minLength: 1, maxLength: 6 }).map((rows): Plan => {
  const [mix] = emptyPlan.mixes
  let plan: Plan = { ...emptyPlan, mixes: [mix, { ...mix, id: "B" }] }
  for (const { kind, fromMm, lengthMm, behindMm, carrier, mix: letter } of rows) {
    const made = hairlineParting(headOf(plan), {
      fromAlongMm: fromMm,
      toAlongMm: fromMm + lengthMm,
      behindMm,
    })
    if ("refused" in made) continue
    const section = newSection(kind, made.parting, plan)
    const laid = isFoil(section) ? ({ ...section, carrier, mix: letter } as Section) : section
    plan = { ...plan, sections: [...plan.sections, laid] }
  }
  return plan
})

const sum = <T>(of: readonly T[], value: (one: T) => number) => of.reduce((all, one) => all + value(one), 0)

describe("foils are counted alike", () => {
  it("in list, zones, total, bowls, clock, chair, table, handout, record and take-home", () =>
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const foils = plan.sections.filter(isFoil)
        if (foils.length === 0) return
        const ids = foils.map(({ id }) => id)
        const inFoil = foils.filter(({ carrier }) => carrier.kind === "foil")
        const pieces = foilCount(foils, plan)
        const { sections, totals, byZone } = measured(plan)

        // The list's rows, the foot and the zones count what is foil; the rest are pieces without.
        expect(totals.foils).toBe(foilCount(inFoil, plan))
        expect(pieces).toBe(totals.foils + foils.length - inFoil.length)
        expect(sum(sections, ({ figures }) => figures.foils)).toBe(totals.foils)
        expect(sum(Object.values(byZone), (zone) => zone.foils)).toBe(totals.foils)

        const rows = tableRows(measured(plan), british)
        expect(sum(rows, ({ text }) => Number(text.foils) || 0)).toBe(totals.foils)

        const mixes = mixesOfPlan(plan)
        expect(sum(mixes, (mix) => mix.foils)).toBe(pieces)
        const served = mixes.flatMap(({ made }) => made?.bowls.flatMap((bowl) => bowl.sections) ?? [])
        expect(served.toSorted()).toEqual(ids.toSorted())

        const timed = timedPlan(plan)
        if (!timed.ok) throw new Error(timed.problems.map(({ code }) => code).join(" "))
        const laid = sum(timed.service.foils, ({ kind, placeMin }) =>
          Math.round((placeMin.mid - extraMin[kind].mid) / foilMin.usual.mid),
        )
        expect(laid).toBe(pieces)
        expect(timed.schedule.foils.map(({ id }) => id)).toEqual(ids)
        expect(plannedService(plan, timed).foils.map(({ id }) => id)).toEqual(ids)
        expect(sum(recordFoils(plan), (foil) => foil.foils)).toBe(pieces)
        const [done] = doneToday(plan, "Europe/London").lines
        expect(done).toMatchObject({ code: "foils", count: pieces })
        expect(aimOf(plan)[0]).toMatchObject({ code: "brighten", foils: pieces })
        const carried = toolsOf(plan).flatMap((tool) => (tool.code === "carriers" ? [tool.count] : []))
        expect(sum(carried, (count) => count)).toBe(pieces)
      }),
      { numRuns: 25 },
    ))

  it("a slice from side to side is two foils everywhere: the example of the rule", () => {
    const made = hairlineParting(headOf(emptyPlan), { fromAlongMm: -75, toAlongMm: 75, behindMm: 20 })
    if ("refused" in made) throw new Error(made.refused)
    const slice = newSection("slice", made.parting, emptyPlan)
    const plan = { ...emptyPlan, sections: [slice] }
    expect(measured(plan).totals.foils).toBe(2)
    expect([isFoil(slice) && foilsIn(slice, plan), mixesOfPlan(plan)[0].foils]).toEqual([2, 2])
    expect(doneToday(plan, "Europe/London").lines[0]).toMatchObject({ count: 2 })
    expect(british.words.record.foil(recordFoils(plan)[0])).toMatch(
      /^Fine slice in 2 foils|^Slice in 2 foils/,
    )
  })
})
