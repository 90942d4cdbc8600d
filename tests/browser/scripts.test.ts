import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { readPdfText } from "../support/pdfText"
import { inkOf, pdfFaults } from "../support/pdfTools"
import { goTo, openPlanFile, options } from "../support/screen"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

const folder = mkdtempSync(join(tmpdir(), "partline-scripts-"))

/** Names invented for this test. The last is of a script of China that hardly a machine has a font for. */
const scripts = {
  Japanese: { initials: "山・花", name: "前髪のフレーム", product: "ハウスパウダー" },
  Korean: { initials: "김하나", name: "얼굴 프레임", product: "하우스 파우더" },
  Arabic: { initials: "س.ل", name: "إطار الوجه", product: "مسحوق الدار" },
  Miao: { initials: "𖼀𖼁", name: "𖼂𖼃 frame", product: "𖼄𖼅" },
} as const

/** Whether the system draws a letter at all: not as it draws one that does not exist. */
const isDrawn = (page: Page, letter: string) =>
  page.evaluate((wanted) => {
    const draw = (text: string) => {
      const canvas = document.createElement("canvas")
      const context = canvas.getContext("2d")
      if (!context) return ""
      context.font = "24px system-ui, sans-serif"
      context.fillText(text, 40, 60)
      return canvas.toDataURL()
    }
    return draw(wanted) !== draw("\u0378") && draw(wanted) !== draw("\u{5ff00}")
  }, letter)

const codes = (text: string) =>
  Array.from(text, (letter) => `U+${letter.codePointAt(0)?.toString(16).toUpperCase()}`)

async function spokenIn(bytes: Uint8Array): Promise<string> {
  const file = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise
  type Node = { alt?: string; role?: string; children?: Node[] }
  const flat = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(flat)]
  const nodes = flat((await (await file.getPage(1)).getStructTree()) as Node)
  return nodes.flatMap(({ role, alt }) => (role === "Span" ? (alt ?? []) : [])).join("|")
}

describe.each(Object.entries(scripts))("a take-home sheet with names in %s", (script, names) => {
  it("is whole on screen and paper: drawn where the system has the letters, else by their codes", async () => {
    const { page, problems, close } = await visit()
    await options(page).nth(10).waitFor()
    const plan = JSON.parse(readFileSync("presets/plans/examplePlan.partline.json", "utf8"))
    plan.name = names.name
    plan.client.initials = names.initials
    for (const mix of plan.mixes) mix.product = names.product
    const file = join(folder, `${script}.json`)
    writeFileSync(file, JSON.stringify(plan))
    await openPlanFile(page, file)
    await goTo(page, "Sheets")
    await page.getByRole("radio", { name: en.sheets.names["take-home"], exact: true }).check()
    await page.locator(".sheet svg").getByText(en.sheets.cards.takeHome.skin).waitFor()
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: en.sheets.screen.save }).click(),
    ])
    const pdf = join(folder, `${script}.pdf`)
    await download.saveAs(pdf)
    expect(pdfFaults(pdf)).toBe("")
    const bytes = new Uint8Array(readFileSync(pdf))
    const [text, spoken] = [(await readPdfText(bytes)).replace(/\s/g, ""), await spokenIn(bytes)]
    const ink = inkOf(pdf)
    for (const [kind, name] of Object.entries(names)) {
      const foreign = name.replace(/[ -~]/g, "")
      const drawn = await Promise.all(Array.from(foreign, (letter) => isDrawn(page, letter)))
      for (const [i, letter] of Array.from(foreign).entries()) {
        if (drawn[i]) expect([kind, spoken]).toEqual([kind, expect.stringContaining(letter)])
        else expect([kind, text]).toEqual([kind, expect.stringContaining(codes(letter)[0])])
      }
      if (!drawn.every(Boolean)) continue
      expect(spoken.split("|").join(" ")).toContain(/[a-z]/i.test(name) ? foreign : name)
    }
    const runs = await page.locator('.sheet svg text[font-family^="system-ui"]').evaluateAll((all) =>
      all.map((each) => {
        const { x, y, width } = (each as SVGTextElement).getBBox()
        return { text: each.textContent ?? "", x, top: y, baseline: Number(each.getAttribute("y")), width }
      }),
    )
    expect(runs.map((run) => run.text).join("|")).toBe(spoken)
    for (const { text: run, x, baseline, width } of runs) {
      const box = { left: x, right: x + width, top: baseline - 3, bottom: baseline + 0.5 }
      if (ink) expect([run, ink(box) > 0.03]).toEqual([run, true])
    }
    expect(problems).toEqual([])
    await close()
  })
})
