import { expect, it } from "vitest"
import { ordinal } from "../../../../../web/panels/placement/list/ordinal"

it("counts places as a person says them", () => {
  expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 23, 112].map(ordinal)).toEqual(
    "1st 2nd 3rd 4th 11th 12th 13th 21st 22nd 23rd 112th".split(" "),
  )
})
