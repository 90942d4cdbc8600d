import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { runCommand } from "../../../../web/command/command"
import type { Plan } from "../../../../web/core/document/schema"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { savePlan } from "../../../../web/core/file/planFile"
import { dayIn } from "../../../../web/core/text/zonedTime"
import { nowHere } from "../../../../web/session/nowHere"
import { answered, askedAll } from "../../../support/answers"

const today = dayIn(nowHere().zone, Date.now())
const toned = (plan: Plan): Plan => {
  const { toning: _, ...rest } = plan
  return { ...rest, date: today }
}
const plans = {
  stop: {
    ...toned(examplePlan()),
    consultation: askedAll(today, { answers: { faceRash: answered("yes", today) } }),
  },
  "not-asked": toned(examplePlan()),
  cleared: { ...toned(examplePlan()), consultation: askedAll(today) },
} satisfies Record<string, Plan>

const run = (verb: string, plan: Plan) =>
  runCommand([verb, "plan.json", ...(verb === "sheet" ? ["--kind", "record", "--out", "card.pdf"] : [])], {
    readText: () => savePlan(plan),
    writeBytes: () => {},
    readFont: async (file) => new Uint8Array(readFileSync(`web/sheets/pens/fonts/${file}`)),
  })

describe.each(["mix", "timing", "sheet"])("%s", (verb) => {
  it.each(["stop", "not-asked", "cleared"] as const)(
    "carries the state of the plan and says it in one sentence: %s",
    async (state) => {
      const { exit, out, err } = await run(verb, plans[state])
      const { clearance } = JSON.parse(out)
      expect(exit).toBe(0)
      expect(clearance).toMatchObject({ state, day: today })
      expect(clearance.stops > 0).toBe(state === "stop")
      expect(clearance.notAsked > 0).toBe(state === "not-asked")
      expect(err.split("\n").filter((line) => line === clearance.words)).toHaveLength(1)
    },
  )
})
