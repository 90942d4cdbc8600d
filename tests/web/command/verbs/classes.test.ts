import { readFileSync } from "node:fs"
import { beforeEach, describe, expect, it } from "vitest"
import { partingBehind } from "../../../../geometry/parting/parting"
import { onOtherSide } from "../../../../geometry/scalp/onOtherSide"
import { runCommand } from "../../../../web/command/command"
import type { Plan } from "../../../../web/core/document/schema"
import { headOf } from "../../../../web/core/figures/measured"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { saveTechnique } from "../../../../web/core/file/techniqueFile"
import { readPdfText } from "../../../support/pdfText"
import { usualTechnique } from "../../../support/techniques"

/** Twelve invented learners by their initials; seven of them had their heads measured. */
const initials = [
  "A.B.",
  "C.D.",
  "E.F.",
  "G.H.",
  "I.J.",
  "K.L.",
  "M.N.",
  "O.P.",
  "Q.R.",
  "S.T.",
  "U.V.",
  "W.X.",
]
const stemOf = (name: string) => name.toLowerCase().replaceAll(".", "-").replace(/-$/, "")
const names = `name,file\n${initials.map((name) => `${name},${stemOf(name)}.json`).join("\n")}\n`
const heads = [
  "name;length;breadth;height;around;over;front-to-nape;hairline",
  "A.B.;187,2;144,4;123,5;;;;",
  "C.D.;178;139;118;;;;peaked",
  "E.F.;196;152;131;;;;receding",
  "G.H.;;;;550;340;360;straight",
  "I.J.;;;;565;352;371;",
  "K.L.;182;150;126;;;;",
  "M.N.;190;146;129;;;;straight",
  "O.P.;;;;;;;",
].join("\r\n")

let files: Map<string, Uint8Array>
let told: string[]
const text = (value: string) => new TextEncoder().encode(value)
beforeEach(() => {
  told = []
  files = new Map([
    ["class.csv", text(names)],
    ["sizes.csv", text(heads)],
    ["own.json", text(saveTechnique({ ...usualTechnique("bright-frame"), id: "own", name: "Ours" }))],
  ])
})
const desk = {
  readText: (path: string) => {
    const found = files.get(path)
    if (!found) throw new Error("no such file")
    return new TextDecoder().decode(found)
  },
  writeBytes: (path: string, bytes: Uint8Array) => {
    if (path.startsWith("locked/")) throw new Error("not allowed")
    if (path === "full/e-f.pdf") throw new Error("no room")
    files.set(path, bytes)
  },
  readFont: async (file: string) => new Uint8Array(readFileSync(`web/sheets/pens/fonts/${file}`)),
  folders: {
    list: () => [],
    remove: () => {},
    make: (path: string) => {
      if (path === "forbidden") throw new Error("not allowed")
    },
  },
  progress: (line: string) => {
    told.push(line)
  },
}
const run = (...typed: string[]) => runCommand(typed, desk)
const planIn = (path: string): Plan => {
  const opened = openPlan(desk.readText(path))
  if (!opened.ok) throw new Error(path)
  return opened.plan
}
const keep = (path: string, plan: Plan) => files.set(path, text(savePlan(plan)))

/** Each learner's plan: the technique on their own head, and then what they did otherwise. */
async function drawn(): Promise<void> {
  for (const [i, name] of initials.entries()) {
    const size = i % 2 === 0 ? ["--length", "187", "--breadth", `${140 + i}`, "--height", "124"] : []
    const { exit } = await run("lay", "bright-frame", "--out", `${stemOf(name)}.json`, ...size)
    expect(exit).toBe(0)
  }
  const change = (name: string, make: (plan: Plan) => Plan["sections"]) => {
    const plan = planIn(`${stemOf(name)}.json`)
    keep(`${stemOf(name)}.json`, { ...plan, lesson: undefined, sections: make(plan) })
  }
  change("C.D.", ({ sections }) => sections.slice(1).map((each) => ({ ...each, twin: undefined })))
  change("E.F.", (plan) =>
    plan.sections.map((each, i) => {
      const moved = partingBehind(headOf(plan), each.parting, 4)
      return i === 0 && "parting" in moved ? { ...each, parting: moved.parting } : each
    }),
  )
  change("G.H.", ({ sections: [first, second, ...rest] }) => [second, first, ...rest])
  change("I.J.", (plan) =>
    plan.sections.map((each, i) =>
      i === 1 ? { ...each, depthMm: { start: each.depthMm.start + 2, end: each.depthMm.end + 2 } } : each,
    ),
  )
  change("K.L.", () => [])
}

const table = () =>
  desk
    .readText("table.csv")
    .trim()
    .split("\r\n")
    .map((line) => line.split(","))

/** Twelve handouts are half a minute of a machine that others use as well. */
const classMs = 90_000

describe("a class of twelve", () => {
  it(
    "gets a handout each, on their own heads where these were measured",
    async () => {
      const given = ["--names", "class.csv", "--heads", "sizes.csv", "--out", "handouts"]
      const { exit, out, err } = await run("handout", "fringe-panel", ...given, "--language", "de")
      expect([exit, err]).toEqual([0, ""])
      const { handouts } = JSON.parse(out)
      expect(handouts.map(({ head }: { head: string }) => head)).toEqual([
        ...Array(7).fill("own"),
        ...Array(5).fill("usual"),
      ])
      expect([told.length, told[11]]).toEqual([12, "12 of 12"])
      const words = await readPdfText(files.get("handouts/c-d.pdf") ?? new Uint8Array())
      expect(words).toContain("C.D.")
      expect(words).toContain("Schritt")
      expect(files.get("handouts/a-b.pdf")).not.toEqual(files.get("handouts/w-x.pdf"))
    },
    classMs,
  )

  it("is marked into one table and a sheet each, by criteria", async () => {
    await drawn()
    const learners = initials.map((name) => `${stemOf(name)}.json`)
    const outs = ["--names", "class.csv", "--out", "table.csv", "--sheets", "sheets"]
    const { exit, out, err } = await run("compare", "bright-frame", ...learners, ...outs)
    expect([exit, err]).toEqual([0, ""])
    const answer = JSON.parse(out)
    expect(answer.learners).toHaveLength(12)
    expect(answer.written).toHaveLength(13)
    expect(answer.written.every((path: string) => files.has(path))).toBe(true)

    const [heading, ...rows] = table()
    const cell = (name: string, column: string) =>
      rows.find(([first]) => first === name)?.[heading.indexOf(column)]
    const { length } = planIn("a-b.json").sections
    for (const name of ["A.B.", "M.N.", "W.X."])
      for (const criterion of ["hairline", "back", "angle", "depth", "order", "kind", "side"])
        expect([name, cell(name, `${criterion}_met`), cell(name, `${criterion}_of`)]).toEqual([
          name,
          `${length}`,
          `${length}`,
        ])
    expect([cell("C.D.", "missing"), cell("C.D.", "hairline_met")]).toEqual(["1", `${length - 1}`])
    expect(cell("E.F.", "back_met")).toBe(`${length - 1}`)
    expect(cell("G.H.", "order_met")).toBe(`${length - 2}`)
    expect(cell("I.J.", "depth_met")).toBe(`${length - 1}`)
    expect([cell("K.L.", "matched"), cell("K.L.", "side_met")]).toEqual(["0", "0"])

    const sheet = await readPdfText(files.get("sheets/e-f.pdf") ?? new Uint8Array())
    for (const part of [
      "E.F.",
      "Assessment sheet",
      "Unaided",
      "Not yet",
      "Signature",
      "4 mm too far behind the hairline",
    ])
      expect(sheet).toContain(part)
  })

  it("tells one learner without a class by the name of the file, with measures and sentences", async () => {
    await drawn()
    const plan = planIn("w-x.json")
    const sections = plan.sections
      .filter((_, i) => i < 2)
      .map((each) => ({ ...each, twin: undefined, parting: onOtherSide(headOf(plan), each.parting) }))
    keep("model.json", {
      ...plan,
      sections: plan.sections.slice(0, 2).map((each) => ({ ...each, twin: undefined })),
    })
    keep("one/mine.partline.json", { ...plan, sections })
    const { exit, out } = await run(
      "compare",
      "model.json",
      "one/mine.partline.json",
      "--within",
      "depth=0.5,angle=5",
    )
    const [learner] = JSON.parse(out).learners
    expect([exit, learner.name, learner.mirrored, learner.matched]).toEqual([0, "mine", true, 2])
    expect(learner.rows[0].beyond).toEqual([
      { code: "other-side", said: "done on the other side of the head" },
    ])
    expect(learner.told[0].sentence).toContain("mirror image")
    expect(JSON.parse(out).tolerances).toMatchObject({ depth: 0.5, angle: 5, hairline: 2 })
  })
})

describe("what a class cannot be made of", () => {
  const handout = (...more: string[]) => run("handout", "bright-frame", ...more)
  it.each([
    ["name\nA.B.\na-b\n", 'Line 3, name: "a-b" makes the same file as line 2. Tell the two apart.'],
    ["name\n???\n", 'Line 2, name: "???" cannot be the name of a file.'],
    ["who\nA.B.\n", "Line 1: name missing."],
    ["name\n", "The list has no rows"],
    ['name,file\n"",x.json\n', "Line 2, name: it is empty."],
    ["name,name\nA,B\n", 'Line 1: the column "name" is there twice.'],
  ])("refuses the class %j", async (list, sentence) => {
    files.set("class.csv", text(list))
    const { exit, out, err } = await handout("--names", "class.csv", "--out", "x")
    expect([exit, out]).toEqual([2, ""])
    expect(err).toContain(`class.csv: ${sentence}`)
  })

  it.each([
    [
      "name,length,breadth,height\nA.B.,187,wide,123\n",
      'Line 2, breadth: expected millimetres above 0, found "wide".',
    ],
    ["name,length,breadth,height\nA.B.,187,,123\n", "Line 2, breadth: it is empty."],
    ["name,length,around\nA.B.,187,550\n", "Line 2: expected either length"],
    [
      "name,length,breadth,height\nA.B.,18.7,14.4,12.3\n",
      "Line 2: no head has these measures. Head breadth, 14.4 mm",
    ],
    ["name,length,breadth,height\nZ.Z.,187,144,123\n", 'Line 2, name: nobody in the class is "Z.Z.".'],
    ["name,length,breadth,height\nA.B.,187,144,123\nA.B.,187,144,123\n", "Line 3, name:"],
    ["name,length,breadth,height,hairline\nA.B.,187,144,123,wavy\n", "Line 2, hairline: expected round"],
  ])("refuses the heads %j", async (list, sentence) => {
    files.set("sizes.csv", text(list))
    const { exit, err } = await handout("--names", "class.csv", "--heads", "sizes.csv", "--out", "x")
    expect(exit).toBe(2)
    expect(err).toContain(`sizes.csv: ${sentence}`)
  })

  it.each([
    ["handout nothing --names class.csv --out x", '"nothing" is no technique'],
    ["handout class.csv --names class.csv --out x", '"class.csv" is no technique'],
    ["handout bright-frame", "--names is missing"],
    ["handout bright-frame --names class.csv", "--out is missing"],
    ["handout bright-frame --names class.csv --out x --paper a5", "--paper: expected a4 or letter"],
    ["handout bright-frame --names gone.csv --out x", '"gone.csv" cannot be read'],
    ["lay bright-frame", "--out is missing"],
    ["lay nothing --out x", '"nothing" is no technique'],
    ["lay bright-frame --out x --length 187", "--breadth is missing"],
    ["lay bright-frame --out x --length 18 --breadth 14 --height 12", "Head length, 18 mm"],
    ["lay bright-frame --out x --hairline wavy", "--hairline: expected round"],
    ["lay bright-frame --out locked/x", '"locked/x" cannot be written'],
    ["compare bright-frame", "LEARNER is missing"],
    ["compare gone.json own.json", '"gone.json" is no model'],
    ["compare bright-frame own.json", "own.json: "],
    ["compare bright-frame gone.json", 'gone.json: "gone.json" cannot be read'],
    ["compare bright-frame own.json --within depth=none", "--within: expected hairline, back"],
    ["compare bright-frame own.json --names class.csv", "--names is for a class"],
    [
      "compare bright-frame own.json --names class.csv --out t.csv",
      '"a-b.json" of A.B. is not among the files',
    ],
    ["compare bright-frame own.json --names class.csv --out t.csv", '"own.json" is nobody\'s'],
  ])("refuses %s", async (line, sentence) => {
    const before = files.size
    const { exit, out, err } = await run(...line.split(" "))
    expect([exit, out, files.size]).toEqual([2, "", before])
    expect(err).toContain(sentence)
  })

  it("says that a folder cannot be made or written to, and what had been written before", async () => {
    files.set("class.csv", text("name\nA.B.\nC.D.\nE.F.\n"))
    const forbidden = await handout("--names", "class.csv", "--out", "forbidden")
    expect([forbidden.exit, forbidden.out]).toEqual([2, ""])
    expect(forbidden.err).toContain('"forbidden" cannot be written')
    expect(forbidden.err).toContain("Nothing was written.")
    const full = await handout("--names", "class.csv", "--out", "full")
    expect([full.exit, full.out]).toEqual([2, ""])
    expect(full.err).toContain("Written before it: full/a-b.pdf, full/c-d.pdf.")
  })

  it("lays and hands out a technique from its file", async () => {
    expect((await run("lay", "own.json", "--out", "laid.json")).exit).toBe(0)
    expect(planIn("laid.json").name).toBe("Ours")
    expect(planIn("laid.json").lesson?.laid).toHaveLength(1)
  })
})
