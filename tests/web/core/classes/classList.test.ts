import { describe, expect, it } from "vitest"
import { readHeads } from "../../../../web/core/classes/classHeads"
import { readClass, whoseFiles } from "../../../../web/core/classes/classList"
import { csvLine } from "../../../../web/core/text/csvCell"
import { csvRows } from "../../../../web/core/text/csvRows"

const classOf = (...rows: string[]) => {
  const read = readClass(`name,file\n${rows.join("\n")}\n`, { withFile: true })
  if (!read.ok) throw new Error(read.problems[0].code)
  return read.learners
}

describe("the list of a class", () => {
  it("is read with a comma, a semicolon or a tab between its cells, and whatever other columns it has", () => {
    for (const sign of [",", ";", "\t"]) {
      const text = `\uFEFFGroup${sign}Name${sign}File\r\n1${sign}Ж. К.${sign}zh.json\r\n`
      const read = readClass(text, { withFile: true })
      expect(read.ok && read.learners).toEqual([{ line: 2, name: "Ж. К.", file: "zh.json", stem: "ж-к" }])
    }
  })

  it("finds each learner's file by its whole path, else by its name where only one has it", () => {
    const [first, second] = classOf("A.B.,one/plan.json", "C.D.,cd.json")
    const whose = whoseFiles([first, second], ["one/plan.json", "two/cd.json"])
    expect(whose.ok && [whose.files.get(first), whose.files.get(second)]).toEqual([
      "one/plan.json",
      "two/cd.json",
    ])
  })

  it("gives no file to two learners, and guesses at none of two", () => {
    const both = whoseFiles(classOf("A.B.,one/plan.json", "C.D.,plan.json"), ["one/plan.json"])
    expect(!both.ok && both.problems).toEqual([
      { code: "learner-without-file", line: 3, name: "C.D.", found: "plan.json" },
    ])
    const either = whoseFiles(classOf("A.B.,plan.json"), ["one/plan.json", "two/plan.json"])
    expect(!either.ok && either.problems.map(({ code }) => code)).toEqual([
      "learner-without-file",
      "file-without-learner",
      "file-without-learner",
    ])
  })

  it("takes a decimal comma in the heads, and leaves those without measures to the usual head", () => {
    const learners = classOf("A.B.,a.json", "C.D.,c.json")
    const read = readHeads("name;length;breadth;height\nA.B.;187,5;144;123\nc.d.;;;\n", learners)
    expect(read.ok && [...read.heads.values()]).toEqual([
      {
        size: { kind: "caliper", lengthMm: 187.5, breadthMm: 144, heightMm: 123 },
        hairline: { form: "round" },
      },
    ])
  })
})

it("writes a line of a table that comes back as it was, and no cell that begins a formula", () => {
  expect(csvRows(csvLine(['Ann "A", B', 3, "two\nlines"]), ",")[0].cells).toEqual([
    'Ann "A", B',
    "3",
    "two\nlines",
  ])
  expect(csvLine(["=1+1", -2, "-x"])).toBe("'=1+1,-2,'-x\r\n")
})
