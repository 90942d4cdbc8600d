import { describe, expect, it } from "vitest"
import { whyNotKept } from "../../../web/storage/shelfWords"

describe("why a plan was not kept", () => {
  const why = (name: string) => whyNotKept(new DOMException("technical words", name))
  it("is said with what to do about it, and without technical words", () => {
    expect(why("QuotaExceededError")).toMatch(/^This browser has no room left\. Save the plan to a file/)
    expect(why("SecurityError")).toMatch(/^This window keeps nothing, as private windows do\. Save the plan/)
    expect(why("UnknownError")).toMatch(
      /^The browser could not keep the plan \(UnknownError\)\. Save it to a file/,
    )
    expect(whyNotKept("odd")).toMatch(/^The browser could not keep the plan\. Save it to a file/)
  })
})
