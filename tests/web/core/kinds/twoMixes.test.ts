import { describe, expect, it } from "vitest"
import { type Foil, isFoil, type RootCoat, rootsOf } from "../../../../geometry/section/section"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import { proposeMixes } from "../../../../web/core/bowls/proposeMixes"
import { weighables } from "../../../../web/core/bowls/weighables"
import { checkPlan } from "../../../../web/core/cautions/visitOfPlan"
import type { Tap } from "../../../../web/core/chair/chair"
import { tapChair } from "../../../../web/core/chair/chairClock"
import { beginService, doneService } from "../../../../web/core/chair/liveService"
import { sectionNotes } from "../../../../web/core/checks/sectionNotes"
import { newSection } from "../../../../web/core/document/newSection"
import { newSalon } from "../../../../web/core/document/salon"
import type { Plan } from "../../../../web/core/document/schema"
import { regroupMixes } from "../../../../web/core/edits/plan/regroupMixes"
import { setHair } from "../../../../web/core/edits/plan/setHair"
import { removeMix, setMix } from "../../../../web/core/edits/plan/setMix"
import { changeKind } from "../../../../web/core/edits/sections/changeKind"
import { changeSection } from "../../../../web/core/edits/sections/changeSections"
import { cureNote } from "../../../../web/core/edits/sections/cureNote"
import { mirrorSections } from "../../../../web/core/edits/sections/mirrorSections"
import { pasteSections } from "../../../../web/core/edits/sections/pasteSections"
import { figuresOf, measured, netOf } from "../../../../web/core/figures/measured"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { coatCodes } from "../../../../web/core/placement/coatCodes"
import { lastVisit } from "../../../../web/core/record/lastVisit"
import { nextService } from "../../../../web/core/record/nextService"
import { recordFoils } from "../../../../web/core/record/recordFoils"
import { rootAlone } from "../../../../web/core/regrowth/regrow"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { planService } from "../../../../web/core/schedule/timing"
import { stepLines } from "../../../../web/core/teaching/stepLines"
import { isAlike, teachingSteps } from "../../../../web/core/teaching/teachingSteps"
import { needOf } from "../../../../web/core/weighing/salonOfPlan"
import { makeDice } from "../../../support/dice"
import { crownParting, done, emptyPlan, refusal, rightParting } from "../../../support/samples"
import { en } from "../../../support/words"

/** Hair of 20 cm everywhere, two mixes, and a slice with product from 6 mm on, so that 19.4 cm are coated. */
const even = done(setHair({ lengthCm: { front: 20, sides: 20, back: 20 } }), emptyPlan)
const [mixA] = even.mixes
const twoMixes = done(
  setMix({ ...mixA, id: "B", developerVolume: 10 }),
  done(setMix({ ...mixA, developerVolume: 20 }), even),
)
const slice = newSection("slice", rightParting, twoMixes)
const behind = newSection("weave", crownParting, { ...twoMixes, sections: [slice] })
const oneEach: Plan = { ...twoMixes, sections: [slice, behind] }

const rooted = (roots: Partial<RootCoat> = {}, plan = oneEach) =>
  done(changeSection("s1", { treatment: { roots: { mix: "B", toMm: 30, first: "ends", ...roots } } }), plan)
const plan = rooted()
const foilIn = ({ sections }: Plan, id = "s1"): Foil => {
  const found = sections.find((section) => section.id === id)
  if (!found || !isFoil(found)) throw new Error(`no foil ${id}`)
  return found
}
const timed = (of: Plan) => {
  const found = timedPlan(of)
  if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join())
  return found
}
const now = { moment: "2026-06-10T10:00:00Z", zone: "Europe/London" }

describe("grams of two mixes along a strand", () => {
  const { coats, strandAreaCm2, hairG, productG } = figuresOf(foilIn(plan), plan)
  const [ends, roots] = coats

  it("go by the length each coats: 2.4 cm of roots and 17 cm of ends are the 19.4 cm of one coat", () => {
    expect(coats.map(({ part, mix }) => [part, mix])).toEqual([
      ["ends", "A"],
      ["roots", "B"],
    ])
    expect(roots.strandAreaCm2 / strandAreaCm2).toBeCloseTo(2.4 / 19.4, 9)
    expect(ends.hairG / hairG).toBeCloseTo(17 / 19.4, 9)
    expect(roots.productG.mid / productG.mid).toBeCloseTo(2.4 / 19.4, 9)
  })

  it("add up to those of the strand in one mix", () => {
    const one = figuresOf(foilIn(oneEach), oneEach)
    for (const end of ["low", "mid", "high"] as const)
      expect(ends.productG[end] + roots.productG[end]).toBeCloseTo(one.productG[end], 9)
  })

  it("are each their own mix's in the totals", () => {
    const { byMix, totals } = measured(plan)
    expect(byMix.get("B")?.productG.mid).toBeCloseTo(netOf(foilIn(plan), plan).coats[1].productG.mid, 9)
    expect((byMix.get("A")?.productG.mid ?? 0) + (byMix.get("B")?.productG.mid ?? 0)).toBeCloseTo(
      totals.productG.mid,
      9,
    )
  })

  it("take each product's own learnt figures", () => {
    const learntOf = (product: string, coat: number) => ({
      product,
      kind: null,
      weighings: 9,
      lossG: { low: 0, mid: 0, high: 0 },
      soakGPerG: { low: 0, mid: 0, high: 0 },
      coatMgPerCm2: { low: coat, mid: coat, high: coat },
    })
    const other = done(setMix({ ...mixA, id: "B", product: "Another" }), plan)
    const salon = { ...newSalon(), learnt: [learntOf(mixA.product, 10), learntOf("Another", 20)] }
    const [own, above] = figuresOf(foilIn(other), { ...other, salon }).coats
    expect(own.productG.mid).toBeCloseTo(own.strandAreaCm2 * 0.01, 9)
    expect(above.productG.mid).toBeCloseTo(above.strandAreaCm2 * 0.02, 9)
  })

  it("add up, whatever the lengths: fifty strands", () => {
    const { even: dice } = makeDice(7)
    for (let n = 0; n < 50; n++) {
      const startMm = 3 + 20 * dice()
      const toMm = startMm + 1 + 60 * dice()
      const drawn = { ...foilIn(oneEach), rootDistanceMm: startMm }
      const roots = { mix: "B", toMm, first: dice() > 0.5 ? ("roots" as const) : ("ends" as const) }
      const both = { ...drawn, roots } as Foil
      const of: Plan = { ...oneEach, sections: [both, behind] }
      const { coats: each, productG: all } = figuresOf(both, of)
      expect(each.reduce((sum, coat) => sum + coat.productG.high, 0)).toBeCloseTo(all.high, 9)
      expect(all.high).toBeCloseTo(figuresOf(drawn, { ...of, sections: [drawn, behind] }).productG.high, 9)
      const served = mixesOfPlan(of).flatMap(({ mix, made }) =>
        (made?.bowls ?? []).flatMap(({ sections }) => sections.map((id) => `${id} ${mix.id}`)),
      )
      expect(served.toSorted()).toEqual(["s1 A", "s1 B", "s2 A"])
    }
  })
})

describe("what cannot be two mixes", () => {
  const set = (roots: Partial<RootCoat>) =>
    changeSection("s1", { treatment: { roots: { mix: "B", toMm: 30, first: "ends", ...roots } } })

  it("is refused with its field and what to do", () => {
    expect(refusal(set({ toMm: 6 }), oneEach)).toContain("let the roots end farther down")
    expect(refusal(set({ toMm: 210 }), oneEach)).toContain("let the roots end nearer")
    expect(refusal(set({ mix: "A" }), oneEach)).toContain("expected another mix")
    expect(refusal(set({ mix: "C" }), oneEach)).toContain("expected one of the mixes listed (A, B)")
    expect(refusal(changeSection("s1", { treatment: { mix: "B" } }), plan)).toContain("expected another mix")
    expect(refusal(changeSection("s1", { treatment: { strand: { from: 0.5, to: 1 } } }), plan)).toMatch(
      /found 30.mm/,
    )
  })

  it("is refused by a file too, with its place", () => {
    const written = (roots: Partial<RootCoat>) => {
      const drawn = { ...foilIn(plan), roots: { mix: "B", toMm: 30, first: "ends", ...roots } }
      const read = openPlan(JSON.stringify({ ...plan, sections: [drawn, behind] }))
      return read.ok ? [] : read.problems.map(({ path, code }) => [path, code])
    }
    expect(written({})).toEqual([])
    expect(written({ mix: "A" })).toEqual([["sections[0].roots.mix", "one-mix-twice"]])
    expect(written({ mix: "C" })).toEqual([["sections[0].roots.mix", "unknown-mix"]])
    expect(written({ toMm: 6 })).toEqual([["sections[0].roots.toMm", "no-roots"]])
  })

  it("is a backcomb or a painted panel: its roots are not coated apart, and it is coated with its own mix", () => {
    for (const kind of ["backcomb", "painted"] as const) {
      const made = foilIn(done(changeKind("s1", kind), plan))
      expect([rootsOf(made), made.mix]).toEqual([undefined, "A"])
      expect(refusal(set({}), done(changeKind("s1", kind), oneEach))).toContain("roots")
    }
    expect(rootsOf(foilIn(done(changeKind("s1", "weave"), plan)))?.mix).toBe("B")
  })

  it("is told where a shorter cut left one of them bare, with a cure", () => {
    const cut = done(setHair({ lengthCm: { front: 2, sides: 2, back: 2 } }), plan)
    const [noted] = sectionNotes(cut.sections, cut)
    expect(noted.note).toMatchObject({ code: "bare-coat", part: "ends", mix: "A", toMm: 30 })
    expect(rootsOf(foilIn(done(cureNote(noted), cut)))).toBeUndefined()
    expect(timedPlan(cut)).toMatchObject({ ok: false, problems: [{ code: "foil-bare", foil: 1 }] })
  })

  it("keeps a mix from being taken away, and from being regrouped without it", () => {
    expect(refusal(removeMix("B"), plan)).not.toBeNull()
    expect(proposeMixes(plan)).toEqual([])
    expect(refusal(regroupMixes([{ mix: mixA, foils: plan.sections }]), plan)).not.toBeNull()
  })
})

describe("two mixes go with their foil", () => {
  it("and leave it as if there had never been two", () => {
    const back = foilIn(done(changeSection("s1", { treatment: { roots: undefined } }), plan))
    expect(isAlike(back, foilIn(oneEach))).toBe(true)
    expect(isAlike(foilIn(plan), foilIn(oneEach))).toBe(false)
  })

  it("to the other side, to a copy, and through a file", () => {
    const copied = done(pasteSections([foilIn(plan)]), plan)
    expect(rootsOf(foilIn(copied, "s3"))).toEqual({ mix: "B", toMm: 30, first: "ends" })
    const mirrored = done(mirrorSections("s1"), { ...plan, sections: [foilIn(plan)] })
    expect(mirrored.sections.map((section) => isFoil(section) && rootsOf(section)?.mix)).toEqual(["B", "B"])
    const read = openPlan(savePlan(plan))
    expect(read.ok && rootsOf(foilIn(read.plan))).toEqual({ mix: "B", toMm: 30, first: "ends" })
  })

  it("to a plan that lacks the second: it is coated with its own", () => {
    const pasted = done(pasteSections([foilIn(plan)]), even)
    const [made] = pasted.sections.filter(isFoil)
    expect([made.mix, rootsOf(made)]).toEqual(["A", undefined])
  })

  it("to the next visit's new growth: that is in the mix of the roots alone", () => {
    const root = rootAlone(foilIn(plan), plan)
    expect(root && [root.mix, rootsOf(root)]).toEqual(["B", undefined])
  })
})

describe("the clock of two mixes", () => {
  const { service, schedule } = timed(plan)
  const [foil] = service.foils
  const [times] = schedule.foils

  it("is ready with the later of them, off at the sooner limit, and takes longer to place", () => {
    const alone = timed(oneEach).service.foils[0]
    expect(foil.placeMin.mid - alone.placeMin.mid).toBeCloseTo(0.75, 9)
    const late = { ...service, foils: [{ ...foil, roots: rootsReady(40) }, service.foils[1]] }
    expect(planService(late).foils[0].readyMin.mid).toBe(40)
    expect(planService(late).foils[0].coatsReadyAtMin.map(({ mid }) => mid - times.onAtMin)).toEqual([
      foil.readyMin.A.mid,
      40,
    ])
    expect(times.readyMin).toEqual(foil.readyMin.A)
  })

  const rootsReady = (minutes: number) => ({
    mix: "B",
    first: "ends" as const,
    productG: foil.productG,
    readyMin: { low: minutes, mid: minutes, high: minutes },
  })

  it("is that of one mix where both are ready and run out alike, but for the minutes of the second brush", () => {
    const alone = timed(oneEach).schedule.foils[0]
    expect(times.readyMin).toEqual(alone.readyMin)
    expect(times.limitAtMin - times.onAtMin).toBe(alone.limitAtMin - alone.onAtMin)
    expect(times.onAtMin).toBe(alone.onAtMin)
  })

  it("mixes both bowls before it, each with its foils", () => {
    expect(schedule.bowls.map(({ mix, foils }) => [mix, foils])).toEqual([
      ["A", ["s1", "s2"]],
      ["B", ["s1"]],
    ])
    expect(schedule.bowls.every(({ mixedAtMin }) => mixedAtMin <= times.onAtMin)).toBe(true)
    const filled = planService({ ...service, bowls: null })
    expect(filled.bowls.map(({ mix, foils }) => [mix, foils])).toEqual([
      ["A", ["s1", "s2"]],
      ["B", ["s1"]],
    ])
  })

  it("weighs each bowl for its own stretch, and learns from it by that", () => {
    const bowls = mixesOfPlan(plan).map(({ made }) => made?.wantedG.mid ?? 0)
    const { byMix } = measured(plan)
    expect(bowls[0]).toBeCloseTo(byMix.get("A")?.productG.mid ?? 0, 9)
    expect(bowls[1]).toBeCloseTo(byMix.get("B")?.productG.mid ?? 0, 9)
    const [a, b] = ["A", "B"].map((mix) => needOf(["s1"], mix, plan).need)
    expect(a.panels + b.panels).toBeCloseTo(netOf(foilIn(plan), plan).foils, 9)
    expect(b.hairG).toBeCloseTo(netOf(foilIn(plan), plan).coats[1].hairG, 9)
    expect(weighables(plan).map(({ key, mix }) => `${key}: ${mix}`)).toEqual([
      "A0: A",
      "B0: B",
      "s1 ends: A",
      "s1 roots: B",
      "s2: A",
    ])
  })
})

describe("cautions look at both mixes", () => {
  const cautionsOf = (of: Plan) => checkPlan(of, now).cautions.map(({ rule }) => rule)

  it("and warn where the roots have the stronger one", () => {
    expect(cautionsOf(plan)).not.toContain("stronger-roots")
    const strong = done(setMix({ ...mixA, id: "B", developerVolume: 30 }), plan)
    expect(cautionsOf(strong)).toContain("stronger-roots")
    const stopped = checkPlan(done(setMix({ ...mixA, id: "B", developerVolume: 40 }), plan), now).stops
    expect(stopped.some(({ mixes }) => mixes?.includes("B"))).toBe(true)
  })
})

describe("what is told of two mixes", () => {
  it("at each step of the handout, in the order they go on", () => {
    const said = (of: Plan) =>
      teachingSteps(of)
        .flatMap((step) => stepLines(step, of))
        .find(({ code }) => code === "product")
    expect(said(plan)).toMatchObject({
      coats: [
        { part: "ends", mix: "A", rootsToMm: 30 },
        { part: "roots", mix: "B", rootsToMm: 30 },
      ],
    })
    expect(said(rooted({ first: "roots" }))).toMatchObject({ coats: [{ mix: "B" }, { mix: "A" }] })
    expect(en.common.coats([{ part: "whole", mix: "A", rootsToMm: null }])).toBe("mix A")
    expect(en.common.coats(coatCodes(foilIn(plan)))).toMatch(
      /^mix A on mid-lengths and ends, then mix B on the roots to 30.mm$/,
    )
  })

  it("by the record of what was done, whatever was drawn since", () => {
    const live = beginService(plan, timed(plan), { wallMs: 0, monotonicMs: 0, load: "one" })
    const kept: Plan = { ...rooted({ toMm: 50 }), service: doneService(live, plan) }
    const [first, second] = recordFoils(kept)
    expect(first.coats).toEqual([
      { part: "ends", mix: "A", rootsToMm: 30 },
      { part: "roots", mix: "B", rootsToMm: 30 },
    ])
    expect(second.coats).toEqual([{ part: "whole", mix: "A", rootsToMm: null }])
  })
})

describe("roots that go on minutes after the ends", () => {
  const late = rooted({ afterMin: 15 })

  it("are as in one visit where there are no minutes: the same plan on the clock, fifty times", () => {
    const { even: dice } = makeDice(11)
    for (let n = 0; n < 50; n++) {
      const roots: RootCoat = { mix: "B", toMm: 10 + 60 * dice(), first: dice() > 0.5 ? "roots" : "ends" }
      const foils = dice() > 0.5 ? [foilIn(oneEach), behind] : [behind, foilIn(oneEach)]
      const of = (change: Partial<RootCoat>): Plan => ({
        ...oneEach,
        sections: foils.map((foil) =>
          foil.id === "s1" ? ({ ...foil, roots: { ...roots, ...change } } as Foil) : foil,
        ),
      })
      const [without, none, zero] = [of({}), of({ afterMin: undefined }), of({ afterMin: 0 })].map(timed)
      expect(none).toEqual(without)
      expect(zero).toEqual(without)
    }
  })

  it("are put on in a visit of their own: the first takes as long as one mix, the second by its own minutes", () => {
    const [foil] = timed(late).service.foils
    expect(foil.placeMin).toEqual(timed(oneEach).service.foils[0].placeMin)
    const nets = netOf(foilIn(late), late).foils
    expect(foil.roots?.later).toMatchObject({ afterMin: 15, placeMin: { mid: 1.25 * nets } })
    const [times] = timed(late).schedule.foils
    expect((times.rootsOnAtMin ?? 0) - times.onAtMin).toBeCloseTo(15, 9)
  })

  it("are refused before the ends, and past what the field holds, with what to do", () => {
    const set = (roots: Partial<RootCoat>) =>
      changeSection("s1", { treatment: { roots: { mix: "B", toMm: 30, first: "ends", ...roots } } })
    expect(refusal(set({ first: "roots", afterMin: 15 }), oneEach)).toContain("Let the ends go on first")
    expect(refusal(set({ afterMin: 61 }), oneEach)).toContain("60")
    expect(refusal(set({ afterMin: -1 }), oneEach)).not.toBeNull()
    const tooLate = rooted({ afterMin: 55 })
    expect(timedPlan(tooLate)).toMatchObject({
      ok: false,
      problems: [{ code: "roots-after-limit", foil: 1 }],
    })
  })

  it("go with the foil to a file, a copy and the other side", () => {
    const read = openPlan(savePlan(late))
    expect(read.ok && rootsOf(foilIn(read.plan))?.afterMin).toBe(15)
    const copied = done(pasteSections([foilIn(late)]), late)
    expect(rootsOf(foilIn(copied, "s3"))?.afterMin).toBe(15)
    const mirrored = done(mirrorSections("s1"), { ...late, sections: [foilIn(late)] })
    expect(mirrored.sections.map((section) => isFoil(section) && rootsOf(section)?.afterMin)).toEqual([
      15, 15,
    ])
  })

  it("are told with their minutes", () => {
    expect(en.common.coats(coatCodes(foilIn(late)))).toMatch(
      /^mix A on mid-lengths and ends, then 15.min later mix B on the roots to 30.mm$/,
    )
    const said = teachingSteps(late)
      .flatMap((step) => stepLines(step, late))
      .find(({ code }) => code === "product")
    expect(said).toMatchObject({ coats: [{ mix: "A" }, { mix: "B", afterMin: 15 }] })
  })

  describe("and what was done of them", () => {
    const at = (minutes: number) => ({ wallMs: minutes * 60_000, monotonicMs: minutes * 60_000, load: "one" })
    const kept = (...taps: readonly [number, Tap][]): Plan => {
      const live = beginService(late, timed(late), at(0))
      const chair = taps.reduce(
        (before, [minutes, tap]) =>
          tapChair(before, tap, { at: at(minutes), revision: before.revision }).chair,
        live.chair,
      )
      return { ...late, service: doneService({ ...live, chair, endedAt: "1970-01-01T01:00:00.000Z" }, late) }
    }
    const on: [number, Tap] = [4, { kind: "on", foil: "s1" }]
    const with18 = kept(on, [22, { kind: "roots-on", foil: "s1" }], [40, { kind: "rinsed" }])
    const without = kept(on, [40, { kind: "rinsed" }])
    const lastOf = (plan: Plan) => lastVisit(nextService(plan, "1970-02-01", "UTC"), "UTC")?.foils[0].coats

    it("stands on the record, and passes the door of a file", () => {
      expect(recordFoils(with18)[0].looks).toEqual([{ code: "roots-on", afterMin: 18, by: null }])
      expect(recordFoils(without)[0].looks).toEqual([{ code: "roots-never" }])
      expect(openPlan(savePlan(with18))).toMatchObject({ ok: true, plan: { service: with18.service } })
    })

    it("is told at the next visit as it went", () => {
      expect(lastOf(with18)).toMatchObject([{ mix: "A" }, { mix: "B", afterMin: 18 }])
      expect(lastOf(without)).toEqual([{ part: "ends", mix: "A", rootsToMm: 30 }])
    })

    it("leaves roots that never had product as they were", () => {
      const [kept18] = nextService(with18, "1970-02-01", "UTC").lightened ?? []
      const [never] = nextService(without, "1970-02-01", "UTC").lightened ?? []
      expect(isFoil(kept18.section) && kept18.section.rootDistanceMm).toBe(foilIn(late).rootDistanceMm)
      expect(isFoil(never.section) && [never.section.rootDistanceMm, rootsOf(never.section)]).toEqual([
        30,
        undefined,
      ])
    })
  })
})
