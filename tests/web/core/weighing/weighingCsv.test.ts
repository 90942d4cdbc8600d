import { describe, expect, test } from "vitest"
import { type ListProblem, readWeighings } from "../../../../web/core/weighing/weighingCsv"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const header = "hairG,strandAreaCm2,productG"
const problemsOf = (text: string) => {
  const read = readWeighings(text)
  return read.ok ? [] : read.problems.map((problem: ListProblem) => say(en.weighing.list.problem, problem))
}

describe("a list of weighings", () => {
  test("one row a foil, in any order of columns, blank lines passed over", () => {
    expect(readWeighings("productG,hairG,strandAreaCm2\n4.1,1.2,420\n\n2.4,0.6,300\n")).toEqual({
      ok: true,
      rows: [
        { line: 2, panels: 1, hairG: 1.2, strandAreaCm2: 420, productG: 4.1 },
        { line: 4, panels: 1, hairG: 0.6, strandAreaCm2: 300, productG: 2.4 },
      ],
    })
  })

  test("bowls say how many foils; a spreadsheet's mark, line ends and quotation marks are no trouble", () => {
    expect(readWeighings(`\uFEFF${header},foils\r\n"9.5",2400,31,8\r\n`)).toMatchObject({
      ok: true,
      rows: [{ panels: 8, hairG: 9.5, productG: 31 }],
    })
  })

  test("a header alone is an empty list", () => {
    expect(readWeighings(`${header}\n`)).toEqual({ ok: true, rows: [] })
  })
})

describe("slips, one sentence each", () => {
  test.each([
    ["", /^Line 1 is empty: expected the columns hairG,strandAreaCm2,productG/],
    ["hair,area,grams\n1,2,3", /^Line 1: hairG, strandAreaCm2 and productG missing; expected the columns/],
    ["hairG,strandAreaCm2\n1,2", /^Line 1: productG missing/],
    [`${header},note\n1,2,3,x`, /^Line 1: "note" is one column too many/],
    [`${header},hairG\n1,2,3,4`, /^Line 1: "hairG" is one column too many/],
    ["hairG;strandAreaCm2;productG\n1,2;420;4,1", /separated by semicolons\. Save the list with commas/],
    ["hairG\tstrandAreaCm2\tproductG\n1\t2\t3", /separated by tabs/],
    [`${header}\n1,2,420,4,1`, /^Line 2 has 5 values for 3 columns\. If numbers hold commas, write points/],
    [`${header}\n"1,2",420,4`, /^Line 2, hairG: found "1,2"; write a point, 1\.2\.$/],
    [`${header}\n1.2,420,-4`, /^Line 2, productG: expected 0 or more, found "-4"\. Weigh again/],
    [`${header}\n1.2,420,0`, /^Line 2, productG: expected grams above 0/],
    [`${header}\n1.2,,4`, /^Line 2, strandAreaCm2: expected a number, it is empty\.$/],
    [`${header}\n1.2,NaN,4`, /^Line 2, strandAreaCm2: expected a number, found "NaN"\.$/],
    [`${header}\n1.2,420,1e300`, /^Line 2, productG: expected at most 5,000/],
    [`${header},foils\n1.2,420,4,2.5`, /^Line 2, foils: expected a whole number from 1/],
    [`{"kind":"partline-plan","version":1}`, /^Line 1: hairG/],
    ["hairG,".repeat(200_000), /^Line 1: strandAreaCm2 and productG missing/],
  ])("%#", (text, words) => {
    expect(problemsOf(text)).toEqual([expect.stringMatching(words)])
  })

  test("every slip of every line is named, up to 20", () => {
    expect(problemsOf(`${header}\n-1,-2,3\n1,x,3`)).toHaveLength(3)
    const many = problemsOf(`${header}\n${"-1,2,3\n".repeat(50)}`)
    expect(many).toHaveLength(21)
    expect(many[20]).toBe("And 30 more like these.")
  })
})
