import { describe, expect, it } from "vitest"
import { readInches, writeInches } from "../../../../../web/panels/client/measures/inches"

describe("inches typed by hand", () => {
  it.each([
    "21 1/2",
    "21.5",
    "21,5",
    "21½",
    "21 ½",
    " 21-1/2 ",
    "21 4/8",
    '21 1/2"',
    "21.5 in",
    "21 1⁄2 inches",
  ])("reads %s as twenty-one and a half", (text) => expect(readInches(text)).toBe(21.5))
  it.each([
    ["22", 22],
    ["3/4", 0.75],
    ["⅜", 0.375],
    ["21⅞", 21.875],
  ])("reads %s as %s", (text, inches) => expect(readInches(text)).toBe(inches))
  it.each(["", "21 1/0", "21 1/", "1/2/3", "twenty", "21 1", "-21", "21..5", "54 cm"])(
    "takes %s for nothing",
    (text) => expect(readInches(text)).toBeNaN(),
  )
})

describe("inches as a tape reads them", () => {
  // 546 mm / 25.4 = 21.496; 336 / 25.4 = 13.228, 1.8 eighths past 13; 361 / 25.4 = 14.213, 1.7 eighths past 14.
  it.each([
    [546 / 25.4, "21 1/2"],
    [336 / 25.4, "13 1/4"],
    [361 / 25.4, "14 1/4"],
    [21.95, "22"],
    [21.125, "21 1/8"],
    [21.75, "21 3/4"],
    [0.625, "5/8"],
    [0, "0"],
  ])("writes %s to the nearest eighth: %s", (inches, text) => expect(writeInches(inches)).toBe(text))
  it("reads what it writes", () => {
    for (let eighths = 0; eighths < 240; eighths++)
      expect(readInches(writeInches(eighths / 8))).toBe(eighths / 8)
  })
})
