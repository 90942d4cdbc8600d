import { describe, expect, it } from "vitest"
import { straightParting } from "../../../../geometry/parting/parting"
import { type HairlinePlace, placeOf } from "../../../../geometry/placing/technique"
import { hairlineForms } from "../../../../geometry/scalp/hairlineLandmarks"
import { bandShape } from "../../../../geometry/section/bandShape"
import { bandAreaCm2 } from "../../../../geometry/section/cellAreas"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { surfacePoint } from "../../../../geometry/surface/frames"
import { workingStarts } from "../../../../presets/placement/workingSections"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique } from "../../../../web/core/edits/lay/layTechnique"
import { fitHairline } from "../../../../web/core/edits/plan/fitHairline"
import { addSections } from "../../../../web/core/edits/sections/addSections"
import {
  addWorkingPartings,
  mirrorWorkingParting,
  startWorkingSections,
} from "../../../../web/core/edits/working/addWorkingPartings"
import {
  bendWorkingParting,
  dragWorkingParting,
  nudgeWorkingParting,
} from "../../../../web/core/edits/working/moveWorkingParting"
import {
  applyByWorkingSection,
  numberByWorkingSection,
} from "../../../../web/core/edits/working/numberWorkingSections"
import {
  moveWorkingSection,
  renameWorkingSection,
} from "../../../../web/core/edits/working/orderWorkingSections"
import { removeWorkingParting } from "../../../../web/core/edits/working/removeWorkingPartings"
import {
  letCross,
  splitAtWorkingPartings,
  trimToWorkingSection,
} from "../../../../web/core/edits/working/trimToWorkingSection"
import { headOf } from "../../../../web/core/figures/measured"
import {
  dividingOf,
  divisionOf,
  numeralOf,
  workingSectionsOf,
} from "../../../../web/core/figures/workingSections"
import { byWorkingSection, crossingsOf, homeOf } from "../../../../web/core/figures/workingSectionsBelonging"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { sideOf } from "../../../../web/core/placement/places"
import type { WorkingNameCode } from "../../../../web/core/placement/workingName"
import { done, emptyPlan, refusal } from "../../../support/samples"
import { usualTechnique } from "../../../support/techniques"
import { en } from "../../../support/words"

const start = (id: string) => {
  const found = workingStarts.find((each) => each.id === id)
  if (!found) throw new Error(`no start ${id}`)
  return found
}
const divided = (id: string, plan: Plan = emptyPlan) => done(startWorkingSections(start(id)), plan)
const four = divided("four-section")
const said = (name: WorkingNameCode) => en.common.workingTitle(name)
const homeIn = (plan: Plan, section: Section) => {
  const home = homeOf(section, plan)
  return home && said(home.name)
}
const names = (plan: Plan) => workingSectionsOf(plan).map(({ name }) => said(name))
const head = headOf(emptyPlan)

/** A slice combed straight between two spots of the sample's head, 8 mm deep. */
function sliceBetween(from: HairlinePlace, to: HairlinePlace, plan: Plan): Section {
  const made = straightParting(head, placeOf(head, from), placeOf(head, to))
  if ("refused" in made) throw new Error(made.refused)
  return { ...newSection("slice", made.parting, plan), depthMm: { start: 8, end: 8 } }
}
const withSlice = (from: HairlinePlace, to: HairlinePlace, plan: Plan = four) =>
  done(addSections(sliceBetween(from, to, plan)), plan)
/** Over the middle behind the fringe: a third of it on the client's right. */
const crossing = withSlice({ landmark: 0.5, behindMm: 30 }, { landmark: -1, behindMm: 30 })

describe("working sections", () => {
  it("are none on a head that is not divided", () => {
    expect(workingSectionsOf(emptyPlan)).toEqual([])
    expect(
      crossingsOf(withSlice({ landmark: 0.5, behindMm: 30 }, { landmark: -1, behindMm: 30 }, emptyPlan)),
    ).toEqual([])
  })
  it("are named by rule and counted in Roman, from the face back, right before left", () => {
    expect(workingSectionsOf(four).map(({ numeral, name }) => `${numeral} ${said(name)}`)).toEqual([
      "I Front right",
      "II Front left",
      "III Back right",
      "IV Back left",
    ])
    expect(names(divided("four-with-triangle"))[0]).toBe("Triangle")
    expect([4, 9, 14, 40].map(numeralOf)).toEqual(["IV", "IX", "XIV", "XL"])
  })
  it("build up: profile and radial make the four, and neither is parted twice", () => {
    const built = divided("radial", divided("profile"))
    expect(names(built)).toEqual(names(four))
    expect(refusal(startWorkingSections(start("four-section")), built)).toBe(
      "“Four sections” is on the head already.",
    )
    expect(dividingOf(divided("four-section", divided("profile"))).dividers).toHaveLength(2)
  })
  it("are found on every hairline", () => {
    for (const form of hairlineForms) {
      const plan = { ...emptyPlan, head: { ...emptyPlan.head, hairline: { form } } }
      for (const each of workingStarts)
        expect(workingSectionsOf(divided(each.id, plan)).length).toBeGreaterThan(1)
    }
  })
  it("are remembered for as long as head and dividing partings stay", () => {
    const renamed = { ...four, name: "Another" }
    expect(divisionOf(renamed)).toBe(divisionOf(four))
    expect(workingSectionsOf(renamed)).toBe(workingSectionsOf(four))
  })
})

describe("a name and a place in the order", () => {
  it("are kept by a place inside, through a file and a new dividing parting", () => {
    const named = done(renameWorkingSection(1, "Parting side"), four)
    expect(names(named)).toEqual(["Front right", "Parting side", "Back right", "Back left"])
    const opened = openPlan(savePlan(named))
    expect(opened.ok && names(opened.plan)).toEqual(names(named))
    expect(names(done(renameWorkingSection(1, " "), named))).toEqual(names(four))
  })
  it("take their foils along, and leave the map numbers", () => {
    const laid = done(layTechnique(usualTechnique("temple-to-temple")), four)
    const moved = done(moveWorkingSection(1, -1), laid)
    expect(names(moved)).toEqual(["Front left", "Front right", "Back right", "Back left"])
    expect(moved.sections.map(sideOf)).toEqual(["left", "left", "left", "right", "right", "right"])
    expect(moved.sections.filter(isFoil).map(({ mapNumber }) => mapNumber)).toEqual([4, 5, 6, 1, 2, 3])
  })
  it("stay at the ends of the list", () => {
    expect(moveWorkingSection(0, -1)(four)).toBe(four)
    expect(moveWorkingSection(3, 1)(four)).toBe(four)
  })
})

describe("a foil belongs", () => {
  it("to the working section in which most of its hair lies", () => {
    expect(homeIn(crossing, crossing.sections[0])).toBe("Front left")
    expect(byWorkingSection(crossing).map(({ sections }) => sections.length)).toEqual([0, 1, 0, 0])
  })
  it("and says so when it reaches into another", () => {
    const [found] = crossingsOf(crossing)
    const whole = bandAreaCm2(bandShape(found.section, head))
    // Half a landmark of one and a half: about a third of the line lies on the right.
    expect(found.cm2 / whole).toBeGreaterThan(0.25)
    expect(found.cm2 / whole).toBeLessThan(0.4)
    expect([said(found.home.name), said(found.into.name)]).toEqual(["Front left", "Front right"])
  })
  it("until it is told that it may", () => {
    const let_ = done(letCross(["s1"]), crossing)
    expect(crossingsOf(let_)).toEqual([])
    const opened = openPlan(savePlan(let_))
    expect(opened.ok && opened.plan.sections[0].mayCross).toBe(true)
  })
})

describe("cutting at the dividing parting", () => {
  const area = (section: Section) => bandAreaCm2(bandShape(section, head))
  it("trims to the working section: what is left crosses no more and lies where it lay", () => {
    const trimmed = done(trimToWorkingSection(["s1"]), crossing)
    const [before, after] = [crossing.sections[0], trimmed.sections[0]]
    expect(crossingsOf(trimmed)).toEqual([])
    expect(homeIn(trimmed, after)).toBe("Front left")
    expect(after.parting.every(([u]) => u < 0.03)).toBe(true)
    const [lost] = crossingsOf(crossing)
    expect(area(after)).toBeCloseTo(area(before) - lost.cm2, 0)
    expect({ ...after, parting: [], depthMm: 0 }).toEqual({ ...before, parting: [], depthMm: 0 })
  })
  it("splits in two: nothing is lost, the larger keeps its number", () => {
    const split = done(splitAtWorkingPartings(["s1"]), crossing)
    expect(split.sections).toHaveLength(2)
    expect(crossingsOf(split)).toEqual([])
    const areas = split.sections.map(area)
    expect(areas[0] + areas[1]).toBeCloseTo(area(crossing.sections[0]), 1)
    const kept = split.sections.find(({ id }) => id === "s1")
    expect(kept && area(kept)).toBe(Math.max(...areas))
    expect(split.sections.map((section) => homeIn(split, section)).sort()).toEqual([
      "Front left",
      "Front right",
    ])
  })
  it("gives a wedge the depth it had got to", () => {
    const [slice] = crossing.sections
    const wedge = { ...crossing, sections: [{ ...slice, depthMm: { start: 4, end: 10 } }] }
    const [piece] = done(trimToWorkingSection(["s1"]), wedge).sections
    // It starts a third of the way along: 4 mm and a third of the 6 mm more.
    expect(piece.depthMm.start).toBeGreaterThan(5.5)
    expect(piece.depthMm.start).toBeLessThan(6.5)
    expect(piece.depthMm.end).toBe(10)
  })
  it("leaves foils alone that cross nothing, and says when no cut helps", () => {
    const inside = withSlice({ landmark: 0.5, behindMm: 20 }, { landmark: 1.5, behindMm: 20 })
    expect(done(trimToWorkingSection(["s1"]), inside).sections[0]).toBe(inside.sections[0])
    const middle = withSlice({ landmark: 0.12, behindMm: 10 }, { landmark: 0.12, behindMm: 60 })
    const astride: Plan = {
      ...middle,
      sections: middle.sections.map((each) => ({
        ...each,
        depthMm: { start: 20, end: 20 },
        taken: "behind",
      })),
    }
    const both = ["front", "behind"] as const
    const across = both
      .map((taken) => ({ ...astride, sections: astride.sections.map((each) => ({ ...each, taken })) }))
      .find((plan) => crossingsOf(plan).length > 0)
    expect(across && refusal(trimToWorkingSection(["s1"]), across)).toMatch(/runs along it/)
  })
})

describe("order by working section", () => {
  const laid = done(layTechnique(usualTechnique("fan-frame")), four)
  it("numbers section by section and side by side", () => {
    const shuffled = { ...laid, sections: laid.sections.toReversed() }
    const numbered = done(numberByWorkingSection, shuffled)
    expect(numbered.sections.map(({ id }) => id)).toEqual(shuffled.sections.map(({ id }) => id))
    const walked = byWorkingSection(numbered).flatMap(({ sections }) => sections.filter(isFoil))
    const sides = ["right", "left"] as const
    expect(walked.map(({ mapNumber }) => mapNumber).toSorted((a, b) => a - b)).toEqual(
      walked.map((_, i) => i + 1),
    )
    for (const { sections } of byWorkingSection(numbered)) {
      const foils = sections.filter(isFoil)
      for (const side of sides) {
        const own = foils.filter((foil) => sideOf(foil) === side).map(({ mapNumber }) => mapNumber)
        expect(own).toEqual(own.map((_, i) => own[0] + i))
      }
    }
  })
  it("puts the order of application in the same order, so that numbers then follow it", () => {
    const shuffled = { ...laid, sections: laid.sections.toReversed() }
    const sorted = done(applyByWorkingSection, shuffled)
    const homes = sorted.sections.map((section) => homeOf(section, sorted)?.numeral)
    expect(homes).toEqual(homes.toSorted())
    const numbered = done(numberByWorkingSection, sorted).sections.filter(isFoil)
    expect(numbered.map(({ mapNumber }) => mapNumber)).toEqual(numbered.map((_, i) => i + 1))
  })
})

describe("a dividing parting", () => {
  const [profile, radial] = dividingOf(four).dividers
  it("is moved, and the working sections with it", () => {
    const moved = done(nudgeWorkingParting(profile.id, { rightMm: 10, forwardMm: 0 }), four)
    expect(names(moved)).toEqual(names(four))
    const [right, left] = workingSectionsOf(moved).map(({ area }) => area.high[0] - area.low[0])
    expect(right).toBeLessThan(left)
    expect(dividingOf(moved).dividers[1]).toBe(radial)
  })
  it("still reaches both edges after a long walk there and back", () => {
    let plan = four
    for (const mm of [...Array(12).fill(4), ...Array(12).fill(-4)])
      plan = done(nudgeWorkingParting(radial.id, { rightMm: 0, forwardMm: mm }), plan)
    expect(names(plan)).toEqual(names(four))
    expect(dividingOf(plan).dividers[1].parting.length).toBeLessThan(100)
  })
  it("is dragged and bent", () => {
    const dragged = done(dragWorkingParting(radial.id, surfacePoint(0, 0), surfacePoint(0, 0.2)), four)
    expect(names(dragged)).toEqual(names(four))
    const middle = profile.parting.length >> 1
    expect(names(done(bendWorkingParting(profile.id, middle, surfacePoint(0.1, 0)), four))).toEqual(
      names(four),
    )
  })
  it("is not moved to where it divides nothing", () => {
    const triangle = divided("triangle")
    const off = dragWorkingParting("d1", surfacePoint(0, 0.5), surfacePoint(0, 1.6))
    expect(refusal(off, triangle)).toMatch(/^Section line 1: expected/)
  })
  it("follows another hairline, from form to form and back", () => {
    const plan = divided("four-with-triangle")
    for (const form of hairlineForms) {
      const fitted = done(fitHairline(form), plan)
      expect(names(fitted)).toEqual(names(plan))
      expect(names(done(fitHairline("round"), fitted))).toEqual(names(plan))
    }
  })
  it("is mirrored to the other side", () => {
    const side = [1.2, 0.4, -0.6, -1.7].map((v) => surfacePoint(0.4, v))
    const both = done(mirrorWorkingParting("d1"), done(addWorkingPartings(side), emptyPlan))
    expect(dividingOf(both).dividers[1].parting).toEqual(side.map(([u, v]) => surfacePoint(-u, v)))
    expect(workingSectionsOf(both)).toHaveLength(3)
  })
  it("takes those that ended on it along when it goes, and the last leaves no trace", () => {
    const fourAndTriangle = divided("four-with-triangle")
    const withoutTriangle = done(removeWorkingParting("d1"), fourAndTriangle)
    expect(dividingOf(withoutTriangle).dividers.map(({ id }) => id)).toEqual(["d3"])
    expect(done(removeWorkingParting("d3"), withoutTriangle)).not.toHaveProperty("workingSections")
  })
})

describe("the file door refuses a dividing parting that", () => {
  const problem = (...pairs: [number, number][]) => {
    const parting = pairs.map(([u, v]) => surfacePoint(u, v))
    const raw = {
      ...divided("radial"),
      workingSections: {
        dividers: [...dividingOf(divided("radial")).dividers, { id: "d2", parting }],
        named: [],
      },
    }
    const opened = openPlan(savePlan(raw))
    return opened.ok ? null : opened.problems[0]
  }
  const sentence = (...places: Parameters<typeof problem>) => {
    const found = problem(...places)
    return found && en.problems.sentence(found)
  }
  it("reaches no edge", () => {
    expect(problem([-0.1, 0.8], [0.1, 0.7])).toEqual({
      path: "workingSections.dividers[1].parting",
      code: "divider-divides-nothing",
    })
    expect(sentence([-0.1, 0.8], [0.1, 0.7])).toBe(
      "Sections of the head, section line 2, parting: expected a line from edge to edge, found one that divides nothing: draw it on to the hairline or to another section line, or remove it.",
    )
  })
  it("goes on past the last edge", () => {
    expect(sentence([0, 1.3], [0, 0.6], [0, -0.6])).toMatch(
      /^Sections of the head, section line 2, parting, point 3: expected the line to end on an edge, found it \d+ mm past the last: end it there, or draw it on to the next\.$/,
    )
  })
  it("crosses itself", () => {
    expect(sentence([0, 1.3], [0, 0], [0.5, 0], [-0.5, 0.7])).toMatch(/does not cross itself: draw it again/)
  })
  it("is no line", () => {
    expect(sentence([0.2, 0.5], [0.2, 0.5])).toMatch(/at least 4 mm long, found 0 mm: draw it again/)
  })
  it("lies on another", () => {
    const [{ parting }] = dividingOf(divided("radial")).dividers
    expect(sentence(...parting.map(([u, v]): [number, number] => [u, v + 0.005]))).toMatch(
      /found one that lies on section line 1: move it or remove it\.$/,
    )
  })
  it("is named twice, or has a field of another's", () => {
    const [divider] = dividingOf(four).dividers
    const twice = { ...four, workingSections: { dividers: [divider, divider], named: [] } }
    const opened = openPlan(JSON.stringify(twice))
    expect(!opened.ok && opened.problems[0]).toEqual({
      path: "workingSections.dividers[1].id",
      code: "taken",
      value: "d1",
      firstPlace: 1,
    })
  })
  it("has no points", () => {
    const opened = openPlan(
      JSON.stringify({ ...four, workingSections: { dividers: [{ id: "d1", parting: [] }], named: [] } }),
    )
    expect(!opened.ok && en.problems.sentence(opened.problems[0])).toBe(
      "Sections of the head, section line 1, parting: expected 2 to 200 points, found a list of 0.",
    )
  })
})

it("adds a dividing parting drawn from edge to edge, and refuses one that is not", () => {
  const across = [-1.35, 0, 1.35].map((u) => surfacePoint(u, 0.6))
  expect(workingSectionsOf(done(addWorkingPartings(across), emptyPlan))).toHaveLength(2)
  expect(refusal(addWorkingPartings([surfacePoint(0, 0), surfacePoint(0, 0.2)]), emptyPlan)).toMatch(
    /^Section line 1: expected a line from edge to edge/,
  )
})
