import { describe, expect, it } from "vitest"
import type { Plan } from "../../../../web/core/document/schema"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { takeHome } from "../../../../web/sheets/cards/takeHome"
import { takeHomeWords } from "../../../../web/sheets/cards/takeHomeWords"
import type { Tag } from "../../../../web/sheets/pens/page"
import { takeHomePage } from "../../../../web/sheets/twin/takeHomePage"
import { makeDice } from "../../../support/dice"
import { texts } from "../../../support/pageTexts"
import { servedPlan } from "../../../support/servedPlan"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"
import { everyLanguage } from "../../../support/words"

const entities: Record<string, string> = { "&lt;": "<", "&gt;": ">", "&quot;": '"', "&amp;": "&" }
const unescaped = (text: string) => text.replace(/&(lt|gt|quot|amp);/g, (entity) => entities[entity])
const close = (text: string) => text.replace(/\s/g, "")

/** What a page says outside its head, without its tags. */
const saidBy = (html: string) => unescaped(html.slice(html.indexOf("<main>")).replace(/<[^>]*>/g, " "))
/** The page without a word: its tags, and what they hold. */
const frameOf = (html: string) => html.replace(/>[^<]*/g, ">")

describe.each(everyLanguage)("the sheet to take home as a page, in %s", (language, words) => {
  it.each([
    ["planned", examplePlan()],
    ["done", servedPlan()],
  ])("says of a service that is %s what the paper says, and nothing else", (_, plan) => {
    const options = sheetOptions({ language, words })
    const said = saidBy(takeHomePage(plan, options))
    const lines = new Map<Tag, string[]>()
    for (const { text, tag } of texts(takeHome(plan, options, sheetFonts))) {
      const read: Tag = tag ?? { role: "P" }
      lines.set(read, [...(lines.get(read) ?? []), text])
    }
    let left = close(said)
    for (const read of [...lines.values()].map((each) => close(each.join("")))) {
      // What is one file has no numbered pages.
      const whole = read.replace(close(words.sheets.heading.page(1, 1)), "").replace(/[,،]$/, "")
      expect(left).toContain(whole)
      left = left.replace(whole, "")
    }
    // The words for the picture are heard, not printed.
    expect(left).toBe(close(takeHomeWords(plan, options).picture.alt))
  })
})

describe("the page", () => {
  const page = (plan: Plan = examplePlan()) => takeHomePage(plan, sheetOptions())

  it("says its language, has one main heading and no script, and asks nothing of the network", () => {
    const html = page()
    expect(html).toMatch(/^<!doctype html>\n<html lang="en-GB">/)
    expect(html.match(/<h1\b/g)).toHaveLength(1)
    expect(html.match(/<h2\b/g)).toHaveLength(4)
    expect(html).not.toMatch(/<script|\son\w+=|\b(src|href)=(?!"#)|url\((?!#)|@import/i)
    expect(html).toContain(`content="default-src 'none'; style-src 'unsafe-inline'`)
  })

  it("keeps what people write as words: no name changes a tag of it", () => {
    const plain = page()
    const { even: roll } = makeDice(20_261_130)
    const pieces = [
      "<",
      ">",
      '"',
      "'",
      "&",
      "/",
      "=",
      "script",
      "svg onload",
      "-->",
      "<!--",
      "]]>",
      "&lt;",
      "\u202e",
    ]
    const hostile = (most: number) => {
      const made = Array.from(
        { length: 1 + Math.floor(roll() * most) },
        () => pieces[Math.floor(roll() * pieces.length)],
      )
      return made.join("").slice(0, 80)
    }
    for (let i = 0; i < 40; i++) {
      const [name, initials, product] = [hostile(9), hostile(2), hostile(9)]
      const example = examplePlan()
      const contact = { name: hostile(9), phone: hostile(4), emergency: hostile(4) }
      const mixes = example.mixes.map((mix) => ({ ...mix, product: `A${product}` }))
      const salon = example.salon && { ...example.salon, contact }
      const html = page({ ...example, name: `A${name}`, client: { initials: `A${initials}` }, mixes, salon })
      expect(frameOf(html)).toBe(frameOf(plain))
      for (const text of [name, initials, product])
        expect(saidBy(html)).toContain(`A${text.replaceAll("\u202e", "")}`)
    }
  })
})
