import { expect, it } from "vitest"
import { csvRows } from "../../../../web/core/text/csvRows"

it("gives the cells of each line that has any, with its number, whatever ends the lines", () => {
  expect(csvRows("\uFEFFa, b\r\n\r\n1,2\r , \n3,", ",")).toEqual([
    { line: 1, cells: ["a", "b"] },
    { line: 3, cells: ["1", "2"] },
    { line: 5, cells: ["3", ""] },
  ])
})

it("takes what stands in quotation marks for one cell, lines counted", () => {
  expect(csvRows('"a;b";"say ""now"""\n"two\nlines";6" wide\n7', ";")).toEqual([
    { line: 1, cells: ["a;b", 'say "now"'] },
    { line: 2, cells: ["two\nlines", '6" wide'] },
    { line: 4, cells: ["7"] },
  ])
})

it("finds nothing in nothing", () => {
  expect(csvRows("", ",")).toEqual([])
  expect(csvRows(" \n;;\n", ";")).toEqual([])
})
