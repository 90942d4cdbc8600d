import type { Page } from "playwright-core"

type Place = readonly [x: number, y: number]

/** One finger on the screen, in px of the page, told step by step. */
export async function fingerOn(page: Page) {
  const session = await page.context().newCDPSession(page)
  const send = (type: "touchStart" | "touchMove" | "touchEnd", places: readonly Place[]) =>
    session.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: places.map(([x, y]) => ({ x, y, id: 1 })),
    })
  return {
    down: (at: Place) => send("touchStart", [at]),
    move: (to: Place) => send("touchMove", [to]),
    up: () => send("touchEnd", []),
  }
}
