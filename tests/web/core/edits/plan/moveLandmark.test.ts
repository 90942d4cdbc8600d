import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { mirrored, type SurfacePoint } from "../../../../../geometry/surface/frames"
import { distance } from "../../../../../geometry/surface/vec3"
import { headInHand } from "../../../../../web/core/checks/hairlineDraft"
import { newSection } from "../../../../../web/core/document/newSection"
import type { Plan } from "../../../../../web/core/document/schema"
import { moveSections } from "../../../../../web/core/edits/parting/moveSections"
import { fitHairline } from "../../../../../web/core/edits/plan/fitHairline"
import { moveLandmark, moveToPlace, restoreLandmarks } from "../../../../../web/core/edits/plan/moveLandmark"
import { setHead } from "../../../../../web/core/edits/plan/setHead"
import { addSections } from "../../../../../web/core/edits/sections/addSections"
import { mirrorSections } from "../../../../../web/core/edits/sections/mirrorSections"
import { headOf } from "../../../../../web/core/figures/measured"
import { examplePlan } from "../../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../../web/core/file/planFile"
import { done, emptyPlan, refusal } from "../../../../support/samples"
import { en } from "../../../../support/words"

const back = (behindMm: number) => ({ towardNapeMm: 0, behindMm })
const landmark = (plan: Plan, side: "left" | "right", name: "temple" | "recession" = "temple") =>
  headOf(plan).hairline.sides[side].landmarks.get(name) as SurfacePoint

describe("moving a landmark", () => {
  it("moves it on both sides, written once", () => {
    const plan = done(moveLandmark("temple", "both", back(5)), emptyPlan)
    expect(plan.head.hairline.moves).toEqual([
      { landmark: "temple", side: "both", towardNapeMm: 0, behindMm: 5 },
    ])
    expect(landmark(plan, "left")).toEqual(mirrored(landmark(plan, "right")))
  })

  it("moves it on one side alone, and the other side's own move stays", () => {
    const one = done(moveLandmark("temple", "left", back(5)), emptyPlan)
    expect(landmark(one, "right")).toEqual(landmark(emptyPlan, "right"))
    const two = done(moveLandmark("temple", "right", back(-2)), one)
    expect(two.head.hairline.moves).toEqual([
      { landmark: "temple", side: "left", towardNapeMm: 0, behindMm: 5 },
      { landmark: "temple", side: "right", towardNapeMm: 0, behindMm: -2 },
    ])
  })

  it("keeps centre front on the middle, on both sides whatever side is asked for", () => {
    const plan = done(moveLandmark("centre front", "left", back(3)), emptyPlan)
    expect(plan.head.hairline.moves?.[0].side).toBe("both")
    expect(headOf(plan).hairline.points[0][0]).toBe(0)
  })

  it("is kept when the form changes, and when the head does", () => {
    const plan = done(moveLandmark("recession", "left", back(6)), emptyPlan)
    const straight = done(fitHairline("straight"), plan)
    expect(straight.head.hairline).toEqual({ ...plan.head.hairline, form: "straight" })
    const large = done(
      setHead({ size: { kind: "caliper", lengthMm: 200, breadthMm: 154, heightMm: 132 } }),
      straight,
    )
    const [own, form] = [
      large,
      { ...large, head: { ...large.head, hairline: { form: "straight" as const } } },
    ].map((each) => headOf(each).surface.pointAt(landmark(each, "left", "recession")))
    expect(distance(own, form)).toBeCloseTo(6, 0)
  })

  it("is put back as the form has it, one landmark or all, to the last bit", () => {
    const moved = done(
      moveLandmark("recession", "both", back(4)),
      done(moveLandmark("temple", "left", back(5)), emptyPlan),
    )
    const one = done(restoreLandmarks(["temple"], "left"), moved)
    expect(one.head.hairline.moves?.map((move) => move.landmark)).toEqual(["recession"])
    const all = done(restoreLandmarks(), moved)
    expect(all.head).toEqual(emptyPlan.head)
    expect(headOf(all)).toBe(headOf(emptyPlan))
  })

  it("goes to the place where a hand lets it go", () => {
    const at = headOf(emptyPlan).hairline.pointAlong(-93)
    const move = moveToPlace(emptyPlan, { name: "temple", side: "left" }, at)
    const plan = done(moveLandmark("temple", "left", move), emptyPlan)
    const { surface } = headOf(plan)
    expect(distance(surface.pointAt(landmark(plan, "left")), surface.pointAt(at))).toBeLessThan(0.1)
  })

  it("is not taken for a longer way than from landmark to landmark", () => {
    expect(refusal(moveLandmark("temple", "both", back(80)), emptyPlan)).toMatch(
      /distance behind the hairline: expected -60 to 60 mm, found 80/,
    )
  })

  it("is refused over the ear, on the face and across itself, while it is in hand too", () => {
    expect(refusal(moveLandmark("ear top", "left", back(-25)), emptyPlan)).toMatch(/left: .* over the ear/)
    expect(refusal(moveLandmark("centre front", "both", back(-58)), emptyPlan)).toMatch(/below the brows/)
    expect(refusal(moveLandmark("recession", "both", { towardNapeMm: 60, behindMm: 0 }), emptyPlan)).toMatch(
      /cross itself/,
    )
    const hairline = {
      form: "round" as const,
      moves: [{ landmark: "ear top" as const, side: "left" as const, towardNapeMm: 0, behindMm: -25 }],
    }
    expect(headInHand(emptyPlan, hairline)).toEqual({
      refused: { code: "hairline", fault: "over-ear" },
    })
  })
})

describe("what is drawn near a landmark that is moved", () => {
  const plan = examplePlan()
  const behindMm = (each: Plan) =>
    each.sections.map(
      ({ parting }) => headOf(each).hairline.coordinates(parting[parting.length >> 1]).behindMm,
    )

  it("goes along: no section is lost, none is left outside", () => {
    const moved = done(
      moveLandmark("temple", "both", back(9)),
      done(moveLandmark("recession", "both", back(8)), plan),
    )
    expect(moved.sections.map(({ id }) => id)).toEqual(plan.sections.map(({ id }) => id))
    behindMm(moved).forEach((mm, i) => {
      expect(Math.abs(mm - behindMm(plan)[i])).toBeLessThan(4)
    })
  })

  it("is left as it was far from there, the same objects", () => {
    const moved = done(moveLandmark("nape corner", "left", back(3)), plan)
    const kept = moved.sections.filter((section) => plan.sections.includes(section))
    expect(kept.length).toBeGreaterThan(0)
  })

  it("comes back to half a millimetre when the landmark does", () => {
    const there = done(moveLandmark("temple", "right", back(6)), plan)
    const again = done(restoreLandmarks(), there)
    again.sections.forEach(({ parting }, i) => {
      parting.forEach((at, k) => {
        const [a, b] = [at, plan.sections[i].parting[k]].map(headOf(plan).surface.pointAt)
        expect(distance(a, b)).toBeLessThan(1)
      })
    })
  })
})

describe("a plan with its own hairline in a file", () => {
  const plan = done(
    setHead({
      wornParting: { kind: "side", side: "left", offCentreMm: 22 },
      whorl: { at: headOf(emptyPlan).hairline.points[0], turns: "clockwise" },
    }),
    done(moveLandmark("temple", "left", { towardNapeMm: 1.3, behindMm: 5 }), emptyPlan),
  )
  const opened = (change: (head: Plan["head"]) => unknown) => {
    const raw = JSON.parse(savePlan(plan))
    raw.head = change(raw.head)
    const result = openPlan(JSON.stringify(raw))
    return result.ok ? [] : result.problems.map(en.problems.clause)
  }

  it("comes back as it was", () => {
    const back = openPlan(savePlan(plan))
    expect(back.ok && back.plan.head.hairline).toEqual(plan.head.hairline)
    expect(back.ok && back.plan.head.wornParting).toEqual(plan.head.wornParting)
  })

  it("is refused with the field and the cure", () => {
    const moves = (...rows: unknown[]) =>
      opened((head) => ({ ...head, hairline: { form: "round", moves: rows } }))
    const temple = { landmark: "temple", side: "both", towardNapeMm: 0, behindMm: 3 }
    expect(moves(temple, { ...temple, side: "left" })[0]).toMatch(
      /each landmark once a side.*temple.*number 1/,
    )
    expect(moves({ ...temple, landmark: "centre front", side: "left" })[0]).toMatch(
      /centre front moved on both sides/,
    )
    expect(moves({ ...temple, landmark: "brow" })[0]).toMatch(/landmark: expected "centre front"/)
    expect(moves({ ...temple, landmark: "ear top", behindMm: -30 })[0]).toMatch(/hairline: .*over the ear/)
    expect(opened((head) => ({ ...head, wornParting: { kind: "left" } }))[0]).toMatch(
      /parting of kind "centre"/,
    )
    expect(
      opened((head) => ({ ...head, wornParting: { kind: "side", side: "left", offCentreMm: 90 } }))[0],
    ).toMatch(/distance from the middle: expected 5 to 60 mm, found 90/)
  })
})

describe("a pair on a hairline whose sides differ", () => {
  it("is told by the hairline of each side: what is done to one is done to the other there", () => {
    const uneven = done(moveLandmark("recession", "left", back(9)), emptyPlan)
    const made = hairlineParting(headOf(uneven), { fromAlongMm: 20, toAlongMm: 75, behindMm: 6 })
    if ("refused" in made) throw new Error(made.refused)
    const slice = newSection("slice", made.parting, uneven)
    const pair = done(mirrorSections(slice.id), done(addSections(slice), uneven))
    const moved = done(moveSections([slice.id], { alongMm: 0, behindMm: 2 }), pair)
    for (const plan of [pair, moved]) {
      const { hairline } = headOf(plan)
      const [one, other] = plan.sections.map(({ parting }) =>
        parting.map((at) => hairline.coordinates(at).behindMm),
      )
      expect(Math.min(...other)).toBeGreaterThan(0)
      // The plain mirror image would be up to 9 mm nearer.
      other.forEach((mm, i) => {
        expect(Math.abs(mm - one[i])).toBeLessThan(2.5)
      })
    }
  })
})
