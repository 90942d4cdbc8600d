import { describe, expect, it } from "vitest"
import { nearestLandmark } from "../../../../geometry/scalp/nearestLandmark"
import { type Foil, isFoil, type Section } from "../../../../geometry/section/section"
import { kindOf } from "../../../../geometry/section/sectionKinds"
import { type TechniqueValues, usualValues } from "../../../../presets/techniques/technique"
import { type HouseTechnique, techniques } from "../../../../presets/techniques/techniques"
import { twinOf } from "../../../../web/core/document/pairs"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique } from "../../../../web/core/edits/lay/layTechnique"
import { headOf } from "../../../../web/core/figures/measured"
import { sideOf } from "../../../../web/core/placement/places"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { stepLines } from "../../../../web/core/teaching/stepLines"
import { teachingSteps } from "../../../../web/core/teaching/teachingSteps"
import { houseTechnique } from "../../../../web/words/every/houseTechnique"
import { done, emptyPlan } from "../../../support/samples"
import { en } from "../../../support/words"

type Case = { name: string; way: TechniqueValues["way"]; words: readonly string[]; plan: Plan }

const waysOf = ({ parameters }: HouseTechnique) =>
  "ways" in parameters ? parameters.ways : (["only"] as const)
const cases: Case[] = techniques.flatMap((house) =>
  waysOf(house).map((way): Case => {
    const told = houseTechnique(house, en.techniques, { ...usualValues(house), way })
    return { name: `${house.id}, ${way}`, way, words: told.steps, plan: done(layTechnique(told), emptyPlan) }
  }),
)
const foilsOf = ({ sections }: Plan): Foil[] => sections.filter(isFoil)
const said = ({ words }: Case) => words.join(" ").replace(/\s/g, " ")

/** Where a parting begins, its middle and its end: the landmark nearest by, and how far behind the hairline. */
function spotsOf({ parting }: Section, plan: Plan) {
  const { hairline } = headOf(plan)
  return [parting[0], parting[parting.length >> 1], parting[parting.length - 1]].map((at) => {
    const { alongMm, behindMm } = hairline.coordinates(at)
    return { landmark: nearestLandmark(hairline, alongMm).name, behindMm }
  })
}

/** What the steps call a place, and the landmarks it may be. */
const places: Record<string, readonly string[]> = {
  "centre front": ["centre front"],
  centre: ["centre front", "centre nape"],
  recession: ["recession"],
  temple: ["temple"],
  sideburn: ["sideburn"],
  corner: ["nape corner"],
  "corner of the nape": ["nape corner"],
  // A worn parting may lie anywhere between the recessions.
  parting: ["centre front", "recession"],
}
const place = Object.keys(places)
  .toSorted((one, other) => other.length - one.length)
  .join("|")
const before = "(?:beside |below |behind |above )?(?:the )?"
const runs = new RegExp(`${before}(${place}) to ${before}(${place})\\b`, "g")

describe.each(cases)("the words and the frames of $name", (each) => {
  const { plan, way } = each
  const text = said(each)
  const spots = plan.sections.map((section) => spotsOf(section, plan))

  it("tell how far behind the hairline, as it is laid and in that order", () => {
    const told = [...text.matchAll(/(\d+(?:\.\d)?) mm (?:behind|inside) (?:it|the hairline)/g)].map(
      ([, mm]) => Number(mm),
    )
    let from = 0
    for (const mm of told) {
      const at = spots.findIndex(([, middle], i) => i >= from && Math.abs(middle.behindMm - mm) < 0.5)
      expect(at, `${mm} mm`).toBeGreaterThanOrEqual(0)
      from = at
    }
  })

  it("run from where the hand begins to where it ends, in the order of the foils", () => {
    let from = 0
    for (const [run, start, end] of text.matchAll(runs)) {
      const at = spots.findIndex(
        ([first, , last], i) =>
          i >= from && places[start].includes(first.landmark) && places[end].includes(last.landmark),
      )
      expect(at, run).toBeGreaterThanOrEqual(0)
      from = at
    }
  })

  it("hold, lay and coat alike", () => {
    const foils = foilsOf(plan)
    const degrees = text.match(/(\d+)° from the head/)
    const upright = /straight up from the head/.test(text) ? 90 : null
    for (const { elevationDeg } of foils)
      expect(elevationDeg).toBe(degrees ? Number(degrees[1]) : (upright ?? 90))
    const isBack = /away from the face|back over the head/.test(text)
    const lies = new Set(foils.map(({ foilLie }) => foilLie))
    if (isBack) expect(lies).toEqual(new Set(["away-from-face"]))
    const start = text.match(/(?:Product starts|Start product) (\d+) mm off the scalp/)
    if (start) for (const foil of foils) expect(kindOf(foil).productStartMm(foil)).toBe(Number(start[1]))
    if (/coat(?:s|ed)? (?:it thinly on )?both sides/.test(text))
      for (const { faces } of foils) expect(faces).toBe(2)
    if (/close to the root/.test(text))
      for (const { rootDistanceMm } of foils) expect(rootDistanceMm).toBeLessThanOrEqual(10)
  })

  it("take from the side of the parting that is drawn, and drift as far as is told", () => {
    for (const { taken } of plan.sections)
      if (/in front of (?:it|the parting)|towards the (?:edge|neck)/.test(text)) expect(taken).toBe("front")
    const drift = text.match(/(\d+) mm farther from the face at the temple than at the front/)
    if (!drift) return
    const drifts = spots.map(([first, , last]) => last.behindMm - first.behindMm)
    expect(drifts.some((mm) => Math.abs(mm - Number(drift[1])) < 0.5)).toBe(true)
  })

  it("begin on the side that is told, and go to the other side in the same order", () => {
    const [first] = foilsOf(plan)
    const heavy = text.match(/The client’s (left|right) is the heavy side/)
    if (heavy) expect(sideOf(first)).toBe(heavy[1])
    if (/Begin on the long side/.test(text))
      expect(sideOf(first)).toBe(way === "parted-left" ? "right" : "left")
    if (!/the other side/i.test(text.split(". ").slice(-4).join(". "))) return
    const ofPairs = plan.sections.filter((section) => twinOf(section, plan))
    const half = ofPairs.length / 2
    expect(half).toBeGreaterThan(0)
    for (let i = 0; i < half; i++) expect(twinOf(ofPairs[i], plan)).toBe(ofPairs[half + i])
  })

  it("never call a parting parallel to the hairline that drifts away from it", () => {
    for (const step of teachingSteps(plan))
      for (const line of stepLines(step, plan))
        if (line.code === "part" && !line.run.isEven)
          expect(line.direction.name).not.toBe("parallel to hairline")
  })

  it("show rows as one step only where all of them begin where its first does", () => {
    for (const { rows } of teachingSteps(plan)) {
      const starts = rows.map(({ parting }) => headOf(plan).hairline.coordinates(parting[0]).alongMm)
      for (const start of starts) expect(Math.abs(start - starts[0])).toBeLessThan(15)
    }
  })

  it("say of a parting over the middle that it goes from one side to the other", () => {
    for (const step of teachingSteps(plan))
      for (const line of stepLines(step, plan))
        if (line.code === "part" && sideOf(step.rows[0]) === "centre") {
          expect(line.run.isAcross).toBe(true)
          expect(en.teaching.stepLines.part(line)).toMatch(/recession to recession|over the middle/)
        }
  })

  it("come in the order of the map, the list and the clock", () => {
    const shown = teachingSteps(plan).flatMap(({ sections }) => sections)
    expect(shown).toEqual(plan.sections)
    const numbers = shown.filter(isFoil).map(({ mapNumber }) => mapNumber)
    expect(numbers).toEqual(numbers.toSorted((a, b) => a - b))
    const timed = timedPlan(plan)
    expect(timed.ok && timed.schedule.foils.map(({ id }) => id)).toEqual(foilsOf(plan).map(({ id }) => id))
  })
})
