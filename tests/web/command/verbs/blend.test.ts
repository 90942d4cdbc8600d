import { describe, expect, test } from "vitest"
import { runCommand } from "../../../../web/command/command"
import type { Desk } from "../../../../web/command/input/verb"

const noDesk: Desk = {
  readText: () => {
    throw new Error("blend reads no file")
  },
  writeBytes: () => {},
  readFont: async () => new Uint8Array(),
}
const run = (line: string) => runCommand(`blend ${line}`.split(" "), noDesk)

describe("blend", () => {
  test("12 and 3 to 6 %, 90 g: a third of the strong", async () => {
    const { exit, out, err } = await run("--have 12,3 --want 6 --grams 90")
    expect([exit, err]).toEqual([0, ""])
    expect(JSON.parse(out)).toEqual({
      parts: [
        { percent: 12, grams: 30 },
        { percent: 3, grams: 60 },
      ],
    })
  })

  test("at most six digits: 45 % of 75 and 10 is 538.462 g of 1000", async () => {
    const { out } = await run("--have 75,10 --want 45 --grams 1000")
    expect(JSON.parse(out).parts[0].grams).toBe(538.462)
  })

  test("what cannot be reached is refused", async () => {
    expect(await run("--have 12,3 --want 2 --grams 90")).toEqual({
      exit: 2,
      out: "",
      err: "--want: 2 % is weaker than the weakest bottle, 3 %; add a weaker bottle.\n",
    })
  })

  test.each([
    [
      "--have 12,3",
      "--want is missing: expected a per cent, 6 or 7.5.\n--grams is missing: expected grams, 90 or 37.5.\n",
    ],
    [
      "--have 12;3 --want 6 --grams 90",
      '--have: expected per cents with a comma between, 12,3, found "12;3".\n',
    ],
    [
      "--have 12,, --want 6 --grams 90",
      '--have: expected per cents with a comma between, 12,3, found "12,,".\n',
    ],
    ["--have 12,3 --want 7,5 --grams 90", '--want: expected a per cent, 6 or 7.5, found "7,5".\n'],
    ["--have 12,3 --want 6 --grams -9", "--grams: -9 g is no amount; enter grams above 0.\n"],
    ["--have 12,3 --want NaN --grams 90", '--want: expected a per cent, 6 or 7.5, found "NaN".\n'],
  ])("%s", async (line, err) => {
    expect(await run(line)).toEqual({ exit: 2, out: "", err })
  })

  test("above the legal limit it counts, and says so", async () => {
    const { exit, err } = await run("--have 35,3 --want 15 --grams 60")
    expect([exit, err]).toEqual([0, expect.stringMatching(/at most 12 % in the EU and the UK/)])
  })
})
