import { describe, expect, it } from "vitest"
import { type FoilKind, isFoil, type Section } from "../../../../geometry/section/section"
import { extraMin, foilMin } from "../../../../presets/timing/pace"
import { checkPlan } from "../../../../web/core/cautions/visitOfPlan"
import { callCode } from "../../../../web/core/chair/callCode"
import { passTime, startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { dueCalls } from "../../../../web/core/chair/dueCalls"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { sectionNameOf } from "../../../../web/core/document/sectionNameCode"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { changeSection } from "../../../../web/core/edits/sections/changeSections"
import { foilCount } from "../../../../web/core/figures/foilCount"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { choicesOfPlan } from "../../../../web/core/schedule/choicesOfPlan"
import { placing } from "../../../../web/core/schedule/scheduleFromPlan"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { stepLines } from "../../../../web/core/teaching/stepLines"
import { faultsOf, selfChecks, timingOf, toolsOf } from "../../../../web/core/teaching/teachingPlan"
import { teachingSteps } from "../../../../web/core/teaching/teachingSteps"
import { say } from "../../../../web/words/say"
import { crownParting, done, emptyPlan, rightParting } from "../../../support/samples"
import { en } from "../../../support/words"

const panel = newSection("painted", rightParting, emptyPlan)
const plan: Plan = { ...emptyPlan, sections: [panel] }
const slice = newSection("slice", crownParting, plan)
const now = { moment: "2026-06-10T10:00:00Z", zone: "Europe/London" }

describe("the caution that product dries", () => {
  const cautionsOf = (of: Plan) => checkPlan(of, now).cautions.map(({ rule }) => rule)

  it("is of a panel in the open air, and of no foil", () => {
    expect(cautionsOf(plan)).toContain("open-air-dries")
    expect(cautionsOf({ ...plan, sections: [slice] })).not.toContain("open-air-dries")
  })

  it("goes once the panel lies under film", () => {
    const film = { kind: "film", widthMm: 127, lengthMm: 305 } as const
    const under = done(changeSection(panel.id, { treatment: { carrier: film } }), plan)
    expect(cautionsOf(under)).not.toContain("open-air-dries")
  })
})

describe("the pace of a painted panel", () => {
  it("is its own, where the plan was timed before there were panels too", () => {
    const placed = { low: 1, mid: 1.5, high: 2 }
    const pace = { slice: placed, weave: placed, backcomb: placed }
    const read = openPlan(savePlan({ ...plan, timing: { ...usualTiming, pace } }))
    if (!read.ok) throw new Error("an older plan is read")
    const choices = choicesOfPlan(read.plan)
    expect(placing("slice", 1, choices).mid).toBe(1.5)
    expect(placing("painted", 1, choices).mid).toBeCloseTo(foilMin.usual.mid + extraMin.painted.mid, 9)
  })

  it("is on the clock", () => {
    expect(timedPlan(plan).ok).toBe(true)
  })
})

describe("a panel is called a panel", () => {
  it("by its number, and where it is counted", () => {
    expect(say(en.common.sectionName, sectionNameOf(panel))).toBe("panel 1")
    const foils = [panel, slice].filter(isFoil)
    const both = { ...plan, sections: foils }
    expect(en.placement.list.title(foilCount([panel], both), "panel")).toBe("1 panel")
    expect(en.placement.list.title(foilCount(foils, both), "both")).toBe("2 foils and panels")
  })

  it("at the chair, in what is shown and what is spoken", () => {
    const at = (minutes: number) => ({ load: "one", monotonicMs: minutes * 60_000, wallMs: minutes * 60_000 })
    const said = (...kinds: FoilKind[]) => {
      const foils = kinds.map((kind, i) => ({
        id: `s${i}`,
        mapNumber: i + 1,
        kind,
        limitMin: 35,
        firstLookMin: 10,
      }))
      const on = foils.reduce(
        (chair, { id }) =>
          tapChair(chair, { kind: "on", foil: id }, { at: at(0), revision: chair.revision }).chair,
        startChair(foils, at(0)),
      )
      const [call] = dueCalls(passTime(on, at(10.5)).chair, { lookMs: 0, limitMs: 0 })
      return [say(en.chair.calls.shown, callCode(call)), say(en.chair.calls.spoken, callCode(call))]
    }
    expect(said("painted")).toEqual(["Panel 1: check now", "Panel 1: check now."])
    expect(said("painted", "slice")[0]).toBe("Foils and panels 1, 2: check now")
    expect(said("weave", "slice")[0]).toBe("Foils 1, 2: check now")
    expect(en.chair.floor.isOn(1, "panel")).toBe("Panel 1 is on")
    expect(en.chair.floor.isOn(1)).toBe("Foil 1 is on")
  })
})

describe("the steps of a painted panel", () => {
  const codesOf = (section: Section) => {
    const alone = { ...emptyPlan, sections: [section] }
    return teachingSteps(alone).flatMap((step) => stepLines(step, alone).map(({ code }) => code))
  }

  it("are its own: no foil is placed", () => {
    expect(codesOf(panel)).toEqual(["part", "hold", "paint", "keep-moist"])
  })

  it("tell a class no pace of foils where there are none", () => {
    expect(timingOf(plan).map(({ code }) => code)).not.toContain("learner-pace")
    expect(timingOf({ ...plan, sections: [slice] }).map(({ code }) => code)).toContain("learner-pace")
  })

  it("tell a class of panels and of no foil, and of both where there are both", () => {
    const words = (of: Plan) =>
      [
        ...toolsOf(of).map((tool) => say(en.teaching.tools, tool)),
        ...timingOf(of).map((time) => say(en.teaching.times, time)),
        ...selfChecks(of).map((check) => say(en.teaching.checks, check)),
        ...faultsOf(of).flatMap((name) => Object.values(en.teaching.faults[name])),
      ].join("\n")
    expect(words({ ...plan, sections: [panel] })).not.toMatch(/foil/i)
    expect(words({ ...plan, sections: [panel] })).toMatch(/each panel/)
    expect(words({ ...plan, sections: [panel, slice] })).toMatch(/each foil and panel/)
  })

  it("leave those of a slice as they were", () => {
    expect(codesOf(slice)).toEqual(["part", "hold", "take", "place", "product"])
  })
})
