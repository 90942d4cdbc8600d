import { beforeEach, describe, expect, it } from "vitest"
import { runCommand } from "../../../../web/command/command"
import { newCard } from "../../../../web/core/cards/card"
import { writeCard } from "../../../../web/core/cards/cardFile"
import { openClient, writeClient } from "../../../../web/core/cards/clientFile"
import { writeBackup } from "../../../../web/core/file/backup"
import { savePlan } from "../../../../web/core/file/planFile"
import { saveTechnique } from "../../../../web/core/file/techniqueFile"
import { emptyPlan, samplePlan } from "../../../support/samples"
import { servedPlan } from "../../../support/servedPlan"
import { usualTechnique } from "../../../support/techniques"

const madeAt = "2026-03-10T10:00:00.000Z"
const ada = { ...newCard("ada", "Ada Quillfeather"), note: "teapot note" }
const ben = { ...newCard("ben", "Ben O.") }
const march = { ...servedPlan(), id: "march", name: "Quillfeather in March" }
const may = { ...samplePlan, id: "may", name: "Quillfeather in May" }
const other = { ...emptyPlan, id: "other", name: "Ben's" }
const text = (card: typeof ada) => {
  const written = writeCard(card)
  if (!written.ok) throw new Error(written.problem.code)
  return written.text
}

/** Ada's plans lie in a file of their own, in a client's file and in a backup with Ben's. */
let files: Map<string, string>
beforeEach(() => {
  files = new Map([
    ["ada.json", writeClient({ madeAt, card: ada, plans: [savePlan(march)] })],
    ["march.partline.json", savePlan(march)],
    ["ben-card.json", text(ben)],
    [
      "backup.json",
      writeBackup({
        madeAt,
        plans: [march, may, other].map((plan) => ({ savedAt: madeAt, text: savePlan(plan) })),
        techniques: [],
        cards: [text(ada), text(ben)],
        visits: [
          { planId: "march", cardId: "ada" },
          { planId: "may", cardId: "ada" },
          { planId: "other", cardId: "ben" },
        ],
        salon: { weighings: [{ weighedAt: madeAt, name: "Quillfeather in May, bowl A", productG: 20 }] },
      }),
    ],
    ["loose.json", savePlan({ ...emptyPlan, id: "loose" })],
    ["ours.technique.json", saveTechnique({ ...usualTechnique("bright-frame"), id: "own", name: "Ours" })],
    ["damaged.json", "{"],
    ["notes.txt", "Quillfeather"],
  ])
})

const desk = {
  readText: (path: string) => {
    const found = files.get(path.replace("salon/", ""))
    if (found === undefined) throw new Error("no such file")
    return found
  },
  writeBytes: (path: string, bytes: Uint8Array) => {
    if (path.startsWith("nowhere/")) throw new Error("no such folder")
    files.set(path.replace("salon/", ""), new TextDecoder().decode(bytes))
  },
  readFont: async () => new Uint8Array(),
  folders: {
    list: (path: string) => {
      if (path.replace("/", "") !== "salon") throw new Error("no such folder")
      return [...files.keys()]
    },
    remove: (path: string) => {
      if (path.endsWith("locked.json")) throw new Error("not allowed")
      files.delete(path.replace("salon/", ""))
    },
  },
}
const run = (...typed: string[]) => runCommand(typed, desk)

describe("clients", () => {
  it("says who is in a folder, how many plans of them, and what nobody knows the owner of", async () => {
    const { exit, out } = await run("clients", "salon/")
    expect(exit).toBe(0)
    expect(JSON.parse(out)).toEqual({
      clients: [
        {
          id: "ada",
          name: "Ada Quillfeather",
          plans: 2,
          unreadPlans: 0,
          lastDay: "2026-03-09",
          files: ["ada.json", "backup.json", "march.partline.json"],
        },
        {
          id: "ben",
          name: "Ben O.",
          plans: 1,
          unreadPlans: 0,
          lastDay: null,
          files: ["backup.json", "ben-card.json"],
        },
      ],
      noCard: ["loose.json"],
      unread: ["damaged.json"],
    })
  })

  it("refuses what is no folder", async () => {
    const { exit, err } = await run("clients", "nowhere")
    expect([exit, err]).toEqual([2, '"nowhere" cannot be read: expected the path of a folder.\n'])
  })
})

describe("export", () => {
  it("writes all of one client to a file that opens again, or to a page", async () => {
    const { exit, out } = await run("export", "salon", "--client", "Ada Quillfeather", "--out", "out.json")
    expect([exit, JSON.parse(out).plans]).toEqual([0, 2])
    const opened = openClient(files.get("out.json") ?? "")
    expect(opened.ok && [opened.client.card, opened.client.plans.length]).toEqual([ada, 2])
    await run("export", "salon", "--client", "ada", "--out", "out.html", "--language", "de")
    expect(files.get("out.html")).toContain("9. März 2026: Quillfeather in March")
  })

  it("says who is meant to be named, and where it cannot be written", async () => {
    const said = async (...typed: string[]) => (await run("export", "salon", ...typed)).err
    expect(await said("--out", "o.json")).toContain("--client is missing")
    expect(await said("--client", "ada")).toContain("--out is missing: expected the path of the JSON")
    expect(await said("--client", "eve", "--out", "o.json")).toContain('nobody here is "eve"')
    files.set("twin.json", text({ ...ada, id: "ada2" }))
    expect(await said("--client", "ada quillfeather", "--out", "o.json")).toContain("ids ada, ada2")
    expect(await said("--client", "ada", "--out", "nowhere/o.json")).toContain("cannot be written")
  })
})

describe("erase", () => {
  it("says first what would go, and changes nothing", async () => {
    const before = new Map(files)
    const { exit, err } = await run("erase", "salon", "--client", "ada")
    expect(exit).toBe(2)
    expect(err).toContain("2 plans, from ada.json, backup.json, march.partline.json. Nothing was changed.")
    expect(files).toEqual(before)
  })

  it("leaves nothing of one client and everything of the others", async () => {
    const { exit, out } = await run("erase", "salon", "--client", "ada", "--sure", "yes")
    expect([exit, JSON.parse(out)]).toEqual([
      0,
      {
        plans: 2,
        removed: ["ada.json", "march.partline.json"],
        rewritten: ["backup.json"],
        unread: ["damaged.json"],
      },
    ])
    for (const [name, left] of files)
      if (name !== "notes.txt") expect(left, name).not.toMatch(/Quillfeather|teapot|"ada"|march|"may"/)
    const { clients, noCard } = JSON.parse((await run("clients", "salon")).out)
    expect(clients).toMatchObject([{ id: "ben", plans: 1 }])
    expect(noCard).toEqual(["loose.json"])
    expect([...files.keys()]).toContain("ours.technique.json")
    expect(JSON.parse(files.get("backup.json") ?? "").salon.weighings[0]).toMatchObject({
      name: "…, bowl A",
      productG: 20,
    })
  })

  it("says which file it could not delete", async () => {
    files.set("locked.json", text(ada))
    const { exit, err } = await run("erase", "salon", "--client", "ada", "--sure", "yes")
    expect(exit).toBe(2)
    expect(err).toContain('"salon/locked.json" cannot be deleted')
  })
})
