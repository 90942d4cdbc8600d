import type { Locator, Page } from "playwright-core"

/** A finger that counts its taps and the values it types. */
export function countedHand(page: Page) {
  const count = { taps: 0, typed: 0 }
  const tap = async (target: Locator) => {
    await target.tap()
    count.taps += 1
  }
  const chip = (group: string | RegExp, word: string) =>
    tap(page.getByRole("group", { name: group }).getByLabel(word, { exact: true }))
  const type = async (field: string, value: string) => {
    await tap(page.getByLabel(field, { exact: true }))
    await page.keyboard.type(value)
    await page.keyboard.press("Enter")
    count.typed += 1
  }
  /** A list takes one tap to open and one to choose. */
  const choose = async (list: string, value: string) => {
    await page.getByRole("combobox", { name: list, exact: true }).selectOption(value)
    count.taps += 2
  }
  const button = (name: string | RegExp) => tap(page.getByRole("button", { name }))
  const screen = (name: string) =>
    tap(page.getByRole("navigation", { name: "The service" }).getByRole("button", { name, exact: true }))
  return { count, tap, chip, type, choose, button, screen }
}

/** The wall clock of London three days ago, as a day-and-time field takes it. */
export const threeDaysAgo = () =>
  new Date(Date.now() - 72 * 3_600_000)
    .toLocaleString("sv-SE", { timeZone: "Europe/London" })
    .slice(0, 16)
    .replace(" ", "T")
