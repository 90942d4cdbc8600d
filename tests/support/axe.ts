import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import type { Page } from "playwright-core"

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8")

/** What axe (Deque's open rules, WCAG 2.2 AA with target size on) finds on the page as it stands. */
export async function axeFaults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource)
  return page.evaluate(async () => {
    // What is still being laid out has no colour to judge yet, and what still moves no size.
    await document.fonts.ready
    const places = () =>
      [...document.body.querySelectorAll("*")]
        .map((element) => Object.values(element.getBoundingClientRect().toJSON()).join(" "))
        .join()
    let before = ""
    for (let now = places(); now !== before; now = places()) {
      before = now
      await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)))
    }
    const { axe } = window as unknown as { axe: typeof import("axe-core") }
    const { violations } = await axe.run(document, { rules: { "target-size": { enabled: true } } })
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join("; ")}`,
    )
  })
}
