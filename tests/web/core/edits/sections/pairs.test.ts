import { describe, expect, it } from "vitest"
import { isFoil, type Section } from "../../../../../geometry/section/section"
import { mirrored, surfacePoint } from "../../../../../geometry/surface/frames"
import type { Plan } from "../../../../../web/core/document/schema"
import { layTechnique } from "../../../../../web/core/edits/lay/layTechnique"
import { repeatBehind } from "../../../../../web/core/edits/lay/repeatBehind"
import { type StackWish, stackBehind } from "../../../../../web/core/edits/lay/stackBehind"
import { bendSection } from "../../../../../web/core/edits/parting/bendSection"
import { dragSections } from "../../../../../web/core/edits/parting/dragSections"
import { moveSections } from "../../../../../web/core/edits/parting/moveSections"
import { breakPairs } from "../../../../../web/core/edits/sections/breakPairs"
import { changeKind } from "../../../../../web/core/edits/sections/changeKind"
import { changeSection } from "../../../../../web/core/edits/sections/changeSections"
import { clearOverlap } from "../../../../../web/core/edits/sections/clearOverlap"
import { mirrorSections } from "../../../../../web/core/edits/sections/mirrorSections"
import { removeSections } from "../../../../../web/core/edits/sections/removeSections"
import { renameSection } from "../../../../../web/core/edits/sections/renameSection"
import { setMapNumber } from "../../../../../web/core/edits/sections/renumberSections"
import { thickenSections } from "../../../../../web/core/edits/sections/thickenSections"
import { measured } from "../../../../../web/core/figures/measured"
import { openPlan, savePlan } from "../../../../../web/core/file/planFile"
import { pairOf } from "../../../../../web/core/placement/pairCode"
import { done, emptyPlan, refusal, samplePlan } from "../../../../support/samples"
import { usualTechnique } from "../../../../support/techniques"
import { en } from "../../../../support/words"

/** s1, a slice on the right, and its image s5; s2, a weave, is single. */
const plan = done(mirrorSections("s1"))
const sectionOf = ({ sections }: Plan, id: string): Section => {
  const section = sections.find((each) => each.id === id)
  if (!section) throw new Error(`no section ${id}`)
  return section
}

/** All of s5 but what is its own is s1 seen in a mirror. */
function expectPair(after: Plan) {
  const [one, other] = [sectionOf(after, "s1"), sectionOf(after, "s5")]
  const { id: _, note: __, twin, parting, ...rest } = one
  expect(other).toMatchObject({ ...rest, ...(isFoil(other) ? { mapNumber: other.mapNumber } : {}) })
  expect(other.parting).toEqual(parting.map(mirrored))
  expect([twin, other.twin]).toEqual(["s5", "s1"])
}

describe("a mirrored section and its image", () => {
  it("are a pair that each names, told in words", () => {
    expectPair(plan)
    const told = (id: string) => {
      const pair = pairOf(sectionOf(plan, id), plan)
      return pair && en.placement.list.pair(pair)
    }
    expect(told("s1")).toBe("pair with foil 4 on the client’s left")
    expect(told("s5")).toBe("pair with foil 1 on the client’s right")
    expect(pairOf(sectionOf(plan, "s2"), plan)).toBeNull()
  })

  const edits = {
    depth: changeSection("s5", { band: { depthMm: { start: 2, end: 7 } } }),
    side: changeSection("s1", { band: { taken: "behind" } }),
    carrier: changeSection("s5", { treatment: { carrier: { kind: "board", widthMm: 90, lengthMm: 200 } } }),
    thickness: thickenSections(["s5"], 2),
    bend: bendSection("s5", 1, surfacePoint(-0.43, 0.8)),
    drag: dragSections(["s1"], surfacePoint(0.4, 0.8), surfacePoint(0.42, 0.74)),
    move: moveSections(["s5"], { alongMm: 4, behindMm: 2 }),
    kind: changeKind("s1", "weave"),
  }
  it.each(Object.entries(edits))("stay a pair when the %s of one is changed", (_, edit) => {
    const after = done(edit, plan)
    expectPair(after)
    expect(sectionOf(after, "s1")).not.toEqual(sectionOf(plan, "s1"))
    expect(sectionOf(after, "s2")).toBe(sectionOf(plan, "s2"))
  })

  it("follow the one named first when both are moved", () => {
    const both = dragSections(["s5", "s1"], surfacePoint(-0.4, 0.8), surfacePoint(-0.42, 0.74))
    const alone = dragSections(["s5"], surfacePoint(-0.4, 0.8), surfacePoint(-0.42, 0.74))
    expect(done(both, plan)).toEqual(done(alone, plan))
  })

  it("become hair left out together, and foils again with numbers of their own", () => {
    const out = done(changeKind("s5", "left-out"), plan)
    expectPair(out)
    const back = done(changeKind("s1", "slice"), out)
    expectPair(back)
    const numbers = back.sections.filter(isFoil).map(({ mapNumber }) => mapNumber)
    expect(new Set(numbers).size).toBe(numbers.length)
  })

  it("keep number, name and note each to itself", () => {
    const named = done(renameSection("s1", " Money piece "), plan)
    expect(sectionOf(named, "s1")).toMatchObject({ name: "Money piece" })
    expect(sectionOf(named, "s5")).toBe(sectionOf(plan, "s5"))
    const noted = done(changeSection("s1", { band: { note: "scar" } }), plan)
    expect(sectionOf(noted, "s5")).toBe(sectionOf(plan, "s5"))
    const swapped = done(setMapNumber("s1", 4), plan)
    expect([sectionOf(swapped, "s1"), sectionOf(swapped, "s5")]).toMatchObject([
      { mapNumber: 4 },
      { mapNumber: 1 },
    ])
  })

  it("are cured of an overlap together", () => {
    const behind = done(repeatBehind("s1", 3), plan)
    const twice = done(moveSections(["s6"], { alongMm: 0, behindMm: -5 }), behind)
    const cured = done(clearOverlap("s6", "s1"), twice)
    expect(sectionOf(cured, "s6").depthMm.start).toBeLessThan(sectionOf(twice, "s6").depthMm.start)
    expect(sectionOf(cured, "s7").depthMm).toEqual(sectionOf(cured, "s6").depthMm)
    expect(measured(cured).overlaps.filter(({ later }) => later.id === "s7")).toEqual([])
  })
})

describe("a pair", () => {
  it("is broken by one button, and then each side is changed by itself", () => {
    const single = done(breakPairs("s5"), plan)
    expect([sectionOf(single, "s1").twin, sectionOf(single, "s5").twin]).toEqual([undefined, undefined])
    const after = done(thickenSections(["s1"], 2), single)
    expect(sectionOf(after, "s5")).toBe(sectionOf(single, "s5"))
  })

  it("ends when one is deleted, and nothing is left when both are", () => {
    expect(sectionOf(done(removeSections("s5"), plan), "s1").twin).toBeUndefined()
    expect(done(removeSections("s1", "s5"), plan).sections.map(({ id }) => id)).toEqual(["s2", "s3", "s4"])
  })

  it("is not mirrored again", () => {
    expect(refusal(mirrorSections("s1", "s5"), plan)).toBe(
      "Foil 1 is one of a pair already. Break the pair to mirror it again.",
    )
    expect(done(mirrorSections("s1", "s2"), plan).sections.map(({ id }) => id)).toContain("s6")
  })

  it("goes on behind as another pair, in one edit", () => {
    const twice = done(repeatBehind("s5", 3), plan)
    expect(twice.sections.length).toBe(plan.sections.length + 2)
    const [one, other] = [sectionOf(twice, "s6"), sectionOf(twice, "s7")]
    expect([one.twin, other.twin, sectionOf(twice, "s1").twin]).toEqual(["s7", "s6", "s5"])
    expect(other.parting).toEqual(one.parting.map(mirrored))
    expect([one, other]).toMatchObject([{ mapNumber: 5 }, { mapNumber: 6 }])
  })

  it("goes on behind as a stack of pairs, side about, each with a number and id of its own", () => {
    const wish: StackWish = {
      ...{ follow: "parting", gapMm: 3, shiftMm: 0, depthMm: { start: 3, end: 3 } },
      second: { kind: "weave", depthMm: 6 },
    }
    const stacked = done(stackBehind("s1", wish, 3), plan)
    const added = stacked.sections.slice(plan.sections.length)
    expect(added.map(({ kind }) => kind)).toEqual(["weave", "weave", "slice", "slice", "weave", "weave"])
    expect(added.map((section) => isFoil(section) && section.mapNumber)).toEqual([5, 6, 7, 8, 9, 10])
    for (const [i, section] of added.entries()) {
      const twin = added[i % 2 === 0 ? i + 1 : i - 1]
      expect(section.twin).toBe(twin.id)
      expect(section.parting).toEqual(twin.parting.map(mirrored))
    }
    expect(measured(stacked).overlaps.filter(({ later }) => added.some(({ id }) => id === later.id))).toEqual(
      [],
    )
  })

  it("says how many of a stack fit a side, and adds none unless all do", () => {
    const wish: StackWish = {
      ...{ follow: "parting", gapMm: 3, shiftMm: 0, depthMm: { start: 3, end: 3 }, second: null },
    }
    const [, fits] =
      /^Only (\d+) of 40 fit behind foil 1/.exec(refusal(stackBehind("s1", wish, 40), plan) ?? "") ?? []
    const stacked = done(stackBehind("s1", wish, Number(fits)), plan)
    expect(stacked.sections.length).toBe(plan.sections.length + 2 * Number(fits))
  })

  it("whose twin was bent by itself goes on behind each as it lies", () => {
    const ownSide = plan.sections.map((section) =>
      section.id === "s5"
        ? { ...section, parting: [...section.parting].reverse().slice(0, 2).reverse() }
        : section,
    )
    const twice = done(repeatBehind("s1", 3), { ...plan, sections: ownSide })
    expect(sectionOf(twice, "s6").parting.length).not.toBe(sectionOf(twice, "s7").parting.length)
    expect(sectionOf(twice, "s7").twin).toBe("s6")
  })

  it("stays one when it is made behind a section that lies across the middle by itself", () => {
    expect(done(repeatBehind("s2", 3), plan).sections.length).toBe(plan.sections.length + 1)
  })

  it("is made of each section that a technique lays on both sides", () => {
    const laid = done(layTechnique(usualTechnique("temple-to-temple")), emptyPlan)
    const paired = laid.sections.filter(({ twin }) => twin)
    expect(paired.length).toBe(laid.sections.length)
    for (const section of paired) {
      const twin = sectionOf(laid, section.twin ?? "")
      expect(twin.twin).toBe(section.id)
      expect(twin.parting).toEqual(section.parting.map(mirrored))
    }
  })
})

describe("at the file door", () => {
  const opened = (change: (text: string) => string) => {
    const result = openPlan(change(savePlan(plan)))
    return result.ok ? result.plan : result.problems.map(en.problems.clause)
  }
  it("a pair comes back as it went", () => {
    expect(opened((text) => text)).toMatchObject({ sections: [{ twin: "s5" }, {}, {}, {}, { twin: "s1" }] })
    expect(savePlan(samplePlan)).not.toContain("twin")
  })
  it("a twin that is not there, names another or is the section itself is told with its cure", () => {
    expect(opened((text) => text.replace('"twin": "s5"', '"twin": "s9"'))).toEqual([
      `section 1, twin: expected a section of this plan, found "s9"; take "twin" out to break the pair`,
      `section 5, twin: expected a section that names "s5" back, but "s1" names "s9"; take "twin" out to break the pair`,
    ])
    expect(opened((text) => text.replace('"twin": "s5"', '"twin": "s2"'))).toContain(
      `section 1, twin: expected a section that names "s1" back, but "s2" names none; take "twin" out to break the pair`,
    )
    expect(opened((text) => text.replace('"twin": "s5"', '"twin": "s1"'))).toContain(
      `section 1, twin: expected another section, found itself; take "twin" out to break the pair`,
    )
  })
})
