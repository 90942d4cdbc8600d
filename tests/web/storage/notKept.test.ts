import { describe, expect, it } from "vitest"
import { whyNotKept } from "../../../web/storage/notKept"
import { say } from "../../../web/words/say"
import { en } from "../../support/words"

describe("why a plan was not kept", () => {
  const why = (error: unknown) => say(en.plans.notKept, whyNotKept(error))
  const named = (name: string) => why(new DOMException("technical words", name))
  it("is said with what to do about it, and without technical words", () => {
    expect(named("QuotaExceededError")).toMatch(/^Browser storage is full\. Save the plan to a file/)
    expect(named("SecurityError")).toMatch(/^Private windows do not save\. Save the plan/)
    expect(named("UnknownError")).toMatch(
      /^The browser could not save the plan \(UnknownError\)\. Save it to a file/,
    )
    expect(why("odd")).toMatch(/^The browser could not save the plan\. Save it to a file/)
  })
})
