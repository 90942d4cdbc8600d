import { describe, expect, it } from "vitest"
import { toJson } from "../../../../web/command/input/significant"

describe("numbers on standard output", () => {
  it("have at most six significant digits", () => {
    expect(JSON.parse(toJson({ a: 123.4567891, b: [0.00123456789, 17], c: -98765.4321 }))).toEqual({
      a: 123.457,
      b: [0.00123457, 17],
      c: -98765.4,
    })
  })
})
