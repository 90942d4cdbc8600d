import { describe, expect, test } from "vitest"
import { examplePlanText } from "../../../../presets/plans/examplePlan"
import { runCommand } from "../../../../web/command/command"
import type { Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { savePlan } from "../../../../web/core/file/planFile"
import { busyPlan } from "../../../support/busyPlan"

const run = (text: string, ...options: string[]) =>
  runCommand(["timing", "plan.json", ...options], {
    readText: () => text,
    writeBytes: () => {},
    readFont: async () => new Uint8Array(),
  })

const busy = busyPlan(90)
const slices = (count: number): string => {
  const sections = busy.sections.filter(({ kind }) => kind === "slice").slice(0, count)
  const plan: Plan = { ...busy, sections }
  return savePlan(plan)
}
type Conflict = { rule: string; why: string; sections: string[]; cures: string[] }
const rulesOf = ({ conflicts }: { conflicts: Conflict[] }) => conflicts.map(({ rule }) => rule)

describe("timing", () => {
  test("prints every foil of the example, its bowls and its looks", async () => {
    const { exit, out, err } = await run(examplePlanText)
    const timed = JSON.parse(out)
    expect(exit).toBe(0)
    expect(timed.foils.length).toBeGreaterThan(5)
    for (const { onAtMin, readyMin, limitAtMin, offAtMin, onMin } of timed.foils) {
      expect(offAtMin - onAtMin).toBeCloseTo(onMin, 4)
      expect(limitAtMin - onAtMin).toBeCloseTo(45, 4) // the house powder's longest time
      expect(readyMin.low).toBeLessThan(readyMin.high)
    }
    expect(timed.firstOnMin).toBe(timed.foils[0].onAtMin)
    expect(timed.looks[0]).toBe(timed.firstOnMin + 5) // the first lies at the hairline
    expect(timed.conflicts).toEqual([])
    expect(err).toContain("Without --from and --to ready times are typical ones")
  })

  // Limit 45, 1.5 minutes a foil: the last of 40 goes on at 58.5; the last of 25 at 36 and has 9; of 13 at 18 and has 27.
  test("one rinse, 40 foils at 1.5 minutes: over-run, which each off when ready cures", async () => {
    const [overRun] = JSON.parse(
      (await run(slices(40), "--pace", "1.5", "--rinse", "together")).out,
    ).conflicts
    expect(overRun.rule).toBe("over-run")
    expect(overRun.cures[0]).toBe("Take each foil off when it is ready")
    expect(JSON.parse((await run(slices(40), "--pace", "1.5")).out).conflicts).toEqual([])
  })
  test("one rinse, 25 foils: the last is under-processed, with 9 minutes", async () => {
    const timed = JSON.parse((await run(slices(25), "--pace", "1.5", "--rinse", "together")).out)
    expect(rulesOf(timed)).toEqual(["under-processed"])
    expect(timed.conflicts[0].why).toMatch(/on for 9\s+min/)
    expect(timed.foils.at(-1).onMin).toBe(9)
  })
  test("one rinse, 8 to 13 foils fit", async () => {
    for (const count of [8, 13])
      expect(
        rulesOf(JSON.parse((await run(slices(count), "--pace", "1.5", "--rinse", "together")).out)),
      ).toEqual([])
  })
  test("two pairs of hands are on with the last sooner, and a short booking is said", async () => {
    const one = JSON.parse((await run(slices(20), "--booking", "90")).out)
    const two = JSON.parse((await run(slices(20), "--hands", "2")).out)
    expect(two.lastOnMin).toBeLessThan(0.6 * one.lastOnMin)
    expect(rulesOf(one)).toEqual(["booking"])
  })

  test("takes a goal: the nearer it is, the sooner a foil may be ready; and says what is out of reach", async () => {
    const readyOf = async (...levels: string[]) =>
      JSON.parse((await run(slices(3), "--from", levels[0], "--to", levels[1])).out)
    const [near, far] = [await readyOf("6", "7"), await readyOf("6", "8.5")]
    expect(near.foils[0].readyMin.mid).toBeLessThan(far.foils[0].readyMin.mid)
    const beyond = await readyOf("4", "9") // 20 volume prints 3 to 4 levels, not 5
    expect(beyond.foils[0].readyMin.mid).toBeNull()
    expect(beyond.conflicts[0].why).toContain("not expected to be ready")
  })

  test("refuses what it cannot use, one sentence a problem", async () => {
    const refused = async (text: string, ...options: string[]) => {
      const { exit, out, err } = await run(text, ...options)
      expect([exit, out]).toEqual([2, ""])
      return err.trim()
    }
    expect(await refused(slices(3), "--pace", "0")).toBe(
      '--pace: expected minutes a foil above 0, found "0".',
    )
    expect(await refused(slices(3), "--hands", "3")).toBe('--hands: expected 1 or 2, found "3".')
    expect(await refused(slices(3), "--rinse", "twice")).toBe(
      '--rinse: expected each or together, found "twice".',
    )
    expect(await refused(slices(3), "--from", "6")).toBe("--from and --to: expected both levels, or neither.")
    expect(await refused(slices(3), "--from", "6", "--to", "11")).toBe(
      "The target level is 11: the scale runs from 1 to 10.",
    )
    expect(await refused(slices(3), "--from", "8", "--to", "6")).toContain("must be lighter")
    expect(await refused(slices(0))).toBe("There are no foils to time: draw one first.")
  })
})

test("times a plan as it says itself, save where an option says otherwise", async () => {
  const plan: Plan = { ...busy, sections: busy.sections.slice(0, 12), timing: { ...usualTiming, hands: 2 } }
  const lastOnMin = async (...options: string[]) =>
    JSON.parse((await run(savePlan(plan), ...options)).out).lastOnMin
  expect(await lastOnMin()).toBe(await lastOnMin("--hands", "2"))
  expect(await lastOnMin("--hands", "1")).toBeGreaterThan(await lastOnMin())
})
