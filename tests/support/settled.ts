import { isDeepStrictEqual } from "node:util"
import type { Page } from "playwright-core"

/** What a reading of the page comes to once two more frames leave it as it is. */
export async function settled<Reading>(page: Page, read: () => Promise<Reading>): Promise<Reading> {
  let last = await read()
  for (;;) {
    await page.evaluate(
      () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
    )
    const next = await read()
    if (isDeepStrictEqual(next, last)) return next
    last = next
  }
}
