import { expect, it } from "vitest"
import { fingerprint } from "../../../../web/sheets/pens/fingerprint"
import type { Item, Page, StampPart } from "../../../../web/sheets/pens/page"

const paper = { name: "A4", widthMm: 210, heightMm: 297, marginMm: 10 }
const pages = (...items: Item[]): Page[] => [{ paper, items }]
const area = (x: number): StampPart => ({ kind: "area", path: [[x, 2]], ink: "#000000" })
const text = (said: string): Item => ({
  kind: "text",
  text: said,
  at: [1, 2],
  sizePt: 9,
  weight: "regular",
  align: "left",
  ink: "#000000",
})

it("follows from the pages alone, to a thousandth of a millimetre", () => {
  expect(fingerprint(pages(area(1)))).toBe(fingerprint(pages(area(1))))
  expect(fingerprint(pages(area(1)))).toMatch(/^[0-9A-F]{32}$/)
  const all = [
    pages(area(1)),
    pages(area(1.001)),
    pages(area(1), area(1)),
    pages(text("1")),
    pages(text("2")),
    pages(text("1"), text("2")),
    pages(text("12"), text("")),
    [...pages(area(1)), ...pages(area(1))],
  ].map(fingerprint)
  expect(new Set(all).size).toBe(all.length)
  expect(fingerprint(pages(area(1.0001)))).toBe(all[0])
})

it("tells drawings that are kept once apart by what they hold and where they come again", () => {
  const [one, other] = [[area(1)], [area(2)]]
  const stamps = (...kept: (readonly StampPart[])[]) =>
    fingerprint(pages(...kept.map((parts): Item => ({ kind: "stamp", parts, at: [0, 0] }))))
  expect(stamps(one, other, one)).not.toBe(stamps(one, other, other))
  expect(stamps(one, one)).not.toBe(stamps(other, other))
})
