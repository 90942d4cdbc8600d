import { expect, it } from "vitest"
import { sheetLanguage } from "../../../web/sheets/sheetLanguage"

const nobody = { isForClient: true, card: null, here: null, chosen: null, screen: "en-GB" } as const

it("is the salon's, as chosen or as the screen is read", () => {
  expect(sheetLanguage(nobody)).toBe("en-GB")
  expect(sheetLanguage({ ...nobody, chosen: "de" })).toBe("de")
  expect(sheetLanguage({ ...nobody, isForClient: false, card: "fr", chosen: "de" })).toBe("de")
})

it("is that of the client's card on what the client takes along, until another is chosen for it", () => {
  expect(sheetLanguage({ ...nobody, card: "fr", chosen: "de" })).toBe("fr")
  expect(sheetLanguage({ ...nobody, card: "fr", here: "uk" })).toBe("uk")
  expect(sheetLanguage({ ...nobody, isForClient: false, card: "fr", here: "uk" })).toBe("en-GB")
})
