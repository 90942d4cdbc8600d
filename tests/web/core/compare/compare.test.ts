import { describe, expect, it } from "vitest"
import { hairlineParting, partingBehind } from "../../../../geometry/parting/parting"
import { onOtherSide } from "../../../../geometry/scalp/onOtherSide"
import type { Section } from "../../../../geometry/section/section"
import type { HouseTechniqueId } from "../../../../presets/techniques/technique"
import { compare } from "../../../../web/core/compare/compare"
import { criteria } from "../../../../web/core/compare/differences"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique } from "../../../../web/core/edits/lay/layTechnique"
import { headOf } from "../../../../web/core/figures/measured"
import { busyPlan } from "../../../support/busyPlan"
import { framePlan } from "../../../support/framePlan"
import { processorMs } from "../../../support/processorMs"
import { emptyPlan } from "../../../support/samples"
import { usualTechnique, usualTechniques } from "../../../support/techniques"

/** Length, breadth, tragion to top: small, middling and large heads of the surveys, and three forms of hairline. */
const heads: readonly Plan["head"][] = (
  [
    [172, 134, 112, "round"],
    [187.2, 144.4, 123.5, "straight"],
    [196, 152, 131, "receding"],
    [180, 156, 128, "peaked"],
  ] as const
).map(([lengthMm, breadthMm, heightMm, form]) => ({
  size: { kind: "caliper", lengthMm, breadthMm, heightMm },
  hairline: { form },
}))
const onHead = (head: Plan["head"]): Plan => ({ ...emptyPlan, head, sections: [] })

function laid(id: HouseTechniqueId, plan: Plan = onHead(heads[1])): Plan {
  const made = layTechnique(usualTechnique(id))(plan)
  if ("refused" in made) throw new Error(id)
  return made as Plan
}
const changed = (plan: Plan, at: number, change: Partial<Section>): Plan => ({
  ...plan,
  sections: plan.sections.map((each, i) => (i === at ? ({ ...each, ...change } as Section) : each)),
})
const scores = (comparison: ReturnType<typeof compare>) =>
  Object.fromEntries(comparison.score.map(({ criterion, met, of }) => [criterion, [met, of]]))

describe("a learner's plan held against a model", () => {
  it.each(usualTechniques.map(({ id }) => id))("meets all of %s with itself", (id) => {
    const plan = laid(id as HouseTechniqueId)
    for (const model of [{ plan }, { technique: usualTechnique(id as HouseTechniqueId) }]) {
      const found = compare(model, plan)
      expect([found.missing, found.extra, found.isMirrored, found.noRoom]).toEqual([[], [], false, 0])
      expect(found.pairs.map(({ model: one, learner }) => one.kind === learner.kind)).not.toContain(false)
      for (const { met, of } of found.score) expect(met).toBe(of)
      expect(found.score[0].of).toBe(plan.sections.length)
    }
  })

  it("tells a section that was moved back by so many mm as so many, on either side of every head", () => {
    for (const head of heads)
      for (const id of ["bright-frame", "full-hairline", "crown-halo"] as const) {
        const plan = laid(id, onHead(head))
        for (const at of plan.sections.keys())
          for (const mm of [-2.5, 4, 9]) {
            const moved = partingBehind(headOf(plan), plan.sections[at].parting, mm)
            if (!("parting" in moved)) continue
            const { pairs } = compare({ plan }, changed(plan, at, { parting: moved.parting }))
            const pair = pairs.find(({ place }) => place.learner === at + 1)
            if (!pair) throw new Error(`${id} ${at} ${mm} has no partner`)
            expect([pair.place.model, Math.abs(pair.found.backMm - mm) <= 0.3]).toEqual([at + 1, true])
          }
      }
  })

  it("tells rows that keep to the hairline by how far behind it they lie, on either side", () => {
    for (const head of heads)
      for (const side of [1, -1])
        for (const mm of [-3, 0.5, 1.6, 6]) {
          const plan = onHead(head)
          const [model, learner] = [8, 8 + mm].map((behindMm) => {
            const run = { fromAlongMm: side * 95, toAlongMm: side * 130, behindMm }
            const made = hairlineParting(headOf(plan), run)
            if (!("parting" in made)) throw new Error(made.refused)
            return { ...plan, sections: [newSection("slice", made.parting, plan)] }
          })
          const [pair] = compare({ plan: model }, learner).pairs
          expect(Math.abs(pair.found.hairlineMm - mm)).toBeLessThan(0.3)
          expect(pair.met.hairline).toBe(Math.abs(mm) <= 2)
        }
  })

  it("tells by how much a section is deeper, farther from the root, longer and turned", () => {
    const plan = laid("bright-frame")
    const [first] = plan.sections
    const deeper = { start: first.depthMm.start + 1.5, end: first.depthMm.end + 0.5 }
    const root = "rootDistanceMm" in first ? first.rootDistanceMm : 0
    const { pairs } = compare({ plan }, changed(plan, 0, { depthMm: deeper, rootDistanceMm: root + 5 }))
    expect(pairs[0].found.depthMm).toBeCloseTo(1.5, 9)
    expect(pairs[0].found.startMm).toBe(5)
    expect([pairs[0].met.depth, pairs[0].met.start, pairs[0].met.hairline]).toEqual([false, false, true])

    const half = first.parting.slice(0, Math.ceil(first.parting.length / 2))
    const shorter = compare({ plan }, changed(plan, 0, { parting: half })).pairs[0]
    expect(shorter.found.lengthShare).toBeLessThan(-0.4)
    expect(shorter.met.length).toBe(false)
  })

  it("says nothing of which end a parting was begun at", () => {
    const plan = laid("bright-frame")
    const { parting, depthMm } = plan.sections[0]
    const turned = { parting: parting.toReversed(), depthMm: { start: depthMm.end, end: depthMm.start } }
    const { score } = compare({ plan }, changed(plan, 0, turned))
    for (const { met, of } of score) expect(met).toBe(of)
  })

  it("tells work on the other side as mirrored, and holds its measures against the mirror image", () => {
    const head = headOf(framePlan)
    const model = { ...framePlan, sections: framePlan.sections.slice(0, 3) }
    const image = model.sections.map((each) => ({ ...each, parting: onOtherSide(head, each.parting) }))
    const found = compare({ plan: model }, { ...model, sections: image })
    expect([found.isMirrored, found.missing, found.extra]).toEqual([true, [], []])
    expect(scores(found)).toEqual({
      ...Object.fromEntries(criteria.map((criterion) => [criterion, [3, 3]])),
      start: [2, 2],
      side: [0, 3],
    })
    expect(compare({ plan: model }, model).isMirrored).toBe(false)
  })

  it.each(["heavy-right", "heavy-left"] as const)("tells %s worked on the other side as mirrored", (way) => {
    const plan = laid("unequal-sides")
    const head = headOf(plan)
    const sections = plan.sections.map((each) => ({ ...each, parting: onOtherSide(head, each.parting) }))
    const [model, learner] =
      way === "heavy-right" ? [plan, { ...plan, sections }] : [{ ...plan, sections }, plan]
    expect(compare({ plan: model }, learner).isMirrored).toBe(true)
  })

  it("tells one section of many on the wrong side as that one", () => {
    const head = headOf(framePlan)
    const [first] = framePlan.sections.slice(1)
    const wrong = changed(framePlan, 1, { parting: onOtherSide(head, first.parting) })
    const found = compare({ plan: framePlan }, wrong)
    expect(found.isMirrored).toBe(false)
    expect(found.pairs.filter(({ isMirrored }) => isMirrored).map(({ place }) => place.model)).toEqual([2])
    expect([found.missing, found.extra]).toEqual([[], []])
  })

  it("tells what is missing and what is extra, and counts what is missing as not met", () => {
    const plan = laid("full-hairline")
    const left = { ...plan, sections: plan.sections.filter((_, i) => i !== 2) }
    const less = compare({ plan }, left)
    expect(less.missing.map(({ place }) => place)).toEqual([3])
    expect(scores(less).hairline).toEqual([plan.sections.length - 1, plan.sections.length])
    expect(scores(less).order).toEqual([plan.sections.length - 1, plan.sections.length])
    const more = compare({ plan: left }, plan)
    expect([more.missing, more.extra.map(({ place }) => place)]).toEqual([[], [3]])
  })

  it("tells two that changed places in the order of application, whichever lies where", () => {
    const { sections, ...plan } = laid("full-hairline")
    const swapped = [...sections]
    ;[swapped[0], swapped[1]] = [swapped[1], swapped[0]]
    const found = compare({ plan: { ...plan, sections } }, { ...plan, sections: swapped })
    expect(found.pairs.filter(({ met }) => !met.order).map(({ place }) => place)).toEqual([
      { model: 1, learner: 2 },
      { model: 2, learner: 1 },
    ])
  })

  it("tells another kind of section in the right place as that", () => {
    const plan = laid("bright-frame")
    const other = plan.sections[0].kind === "weave" ? "slice" : "weave"
    const woven = newSection(other, plan.sections[0].parting, { ...plan, sections: [] })
    const made = { ...woven, depthMm: plan.sections[0].depthMm, taken: plan.sections[0].taken }
    const found = compare({ plan }, { ...plan, sections: [made, ...plan.sections.slice(1)] })
    expect(found.pairs[0].found.kind).toEqual({ model: plan.sections[0].kind, learner: other })
    expect(found.pairs.filter(({ met }) => !met.kind).map(({ place }) => place.model)).toEqual([1])
  })

  it("meets nothing of any criterion with an empty plan", () => {
    const plan = laid("bright-frame")
    const found = compare({ plan }, { ...plan, sections: [] })
    expect([found.isMirrored, found.missing.length]).toEqual([false, plan.sections.length])
    for (const { met } of found.score) expect(met).toBe(0)
    expect(found.score[0].of).toBe(plan.sections.length)
    expect(compare({ plan: { ...plan, sections: [] } }, plan).extra).toHaveLength(plan.sections.length)
  })

  it("lays a technique, and a plan that holds one, on the learner's own head by its measures", () => {
    for (const head of heads) {
      const learner = laid("bright-frame", onHead(head))
      const model = laid("bright-frame", onHead(heads[0]))
      for (const { met, of } of compare({ plan: model }, learner).score) expect(met).toBe(of)
      // What was drawn by hand lies where the hairline of the other head tells it.
      const drawn = changed(model, 0, { depthMm: { start: 9, end: 9 } })
      const found = compare({ plan: drawn }, learner)
      expect(found.isLaidAnew).toBe(head !== heads[0])
      expect(scores(found).depth[0]).toBe(model.sections.length - 1)
      expect(scores(found).hairline).toEqual([model.sections.length, model.sections.length])
    }
  })

  it("compares 500 sections within four seconds of the processor's time", async () => {
    const plan = busyPlan(500)
    const learner = { ...plan, sections: plan.sections.map((each) => ({ ...each })) }
    let found = 0
    const ms = await processorMs(() => {
      found = compare({ plan }, learner).pairs.length
    })
    expect(found).toBe(500)
    expect(ms).toBeLessThan(4000)
  })
})
