import { expect, it } from "vitest"
import { initialsOf } from "../../../../web/core/text/initials"

it.each([
  ["Ada Brightwell", "AB"],
  ["marie-lou du pré", "MLD"],
  ["Їжакевич Ольга", "ЇО"],
  ["(Ana) *Berg", "AB"],
  ["  ", ""],
  ["花", "花"],
])("makes initials of %j, in any script, no more than there is room for", (name, initials) => {
  expect(initialsOf(name, 3)).toBe(initials)
})

it("leaves none out where nothing is said of room", () => {
  expect(initialsOf("Ana Maria del Mar Berg-Lund")).toBe("AMDMBL")
})
