import { describe, expect, it } from "vitest"
import { parseArguments } from "../../../../web/command/input/parseArguments"

const verb = { takesFile: true, options: ["paper", "out"] }
const parse = (...typed: string[]) => parseArguments(typed, verb)

describe("what is typed after a verb", () => {
  it("is a file and options, in any order and either spelling", () => {
    const expected = { ok: true, file: "plan.json", options: { paper: "a4", out: "x=1.pdf" } }
    expect(parse("--paper", "a4", "plan.json", "--out=x=1.pdf")).toEqual(expected)
    expect(parse("plan.json", "--out", "x=1.pdf", "--paper=a4")).toEqual(expected)
  })

  it("is refused with one code a problem", () => {
    expect(parse("plan.json", "--colour", "red", "-o", "x", "--paper")).toEqual({
      ok: false,
      problems: [
        { code: "unknown-option", option: "colour", known: ["paper", "out"] },
        { code: "unknown-option", option: "o", known: ["paper", "out"] },
        { code: "no-value", option: "paper" },
      ],
    })
  })

  it("needs its file once, where the verb takes one", () => {
    expect(parse()).toEqual({ ok: false, problems: [{ code: "file-missing" }] })
    expect(parse("a", "b")).toMatchObject({ ok: false })
    expect(parseArguments(["a"], { takesFile: false, options: [] })).toMatchObject({ ok: false })
  })

  it("does not take an option twice, nor a name every object has", () => {
    expect(parse("p", "--out", "a", "--out", "b")).toMatchObject({ ok: false })
    expect(parse("p", "--constructor", "a")).toMatchObject({ ok: false })
  })
})
