import type { CDPSession } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, tablet, visit } from "../support/browser"
import { onLargeView, options, startNewPlan, takeTool } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

type Finger = { x: number; y: number; id: number }

async function fingers(session: CDPSession, steps: readonly (readonly Finger[])[]) {
  let down = 0
  for (const touchPoints of steps) {
    const type =
      touchPoints.length > down ? "touchStart" : touchPoints.length < down ? "touchEnd" : "touchMove"
    await session.send("Input.dispatchTouchEvent", { type, touchPoints: [...touchPoints] })
    down = touchPoints.length
  }
}

/** An empty plan on a phone with the slice in hand, and a finger's way along places of the front view, mm. */
async function withSliceOnPhone(places: readonly (readonly [x: number, y: number])[]) {
  const visited = await visit(phone)
  const { page } = visited
  await options(page).first().waitFor()
  await startNewPlan(page)
  await takeTool(page, "Slice")
  const session = await page.context().newCDPSession(page)
  const along = await Promise.all(
    places.map(async ([x, y]) => {
      const [left, top] = await onLargeView(page, "front", x, y)
      return [{ x: left, y: top, id: 1 }]
    }),
  )
  return { ...visited, session, along }
}

it("draws with a finger, zooms with two, and a second finger calls the stroke off", async () => {
  const { page, problems, close, session, along } = await withSliceOnPhone([
    [-10, 90],
    [-22, 90],
    [-35, 88],
    [-48, 80],
    [-58, 70],
  ])

  await fingers(session, [...along, []])
  await page.waitForTimeout(200)
  expect(await options(page).count()).toBe(1)

  const [middle] = along[2]
  const second = { x: middle.x + 60, y: middle.y + 120, id: 2 }
  await fingers(session, [
    [along[0][0]],
    [along[1][0]],
    [along[1][0], second],
    [
      { ...along[1][0], x: along[1][0].x - 40 },
      { ...second, x: second.x + 60 },
    ],
    [{ ...along[1][0], x: along[1][0].x - 40 }],
    [],
  ])
  await page.waitForTimeout(200)
  expect(await options(page).count()).toBe(1)
  await page.getByRole("button", { name: "Hairline", exact: true }).click()
  expect(await page.getByRole("button", { name: "Hairline", exact: true }).count()).toBe(0)
  expect(await page.evaluate(() => window.visualViewport?.scale)).toBe(1)
  expect(problems).toEqual([])
  await close()
})

it("takes back with a tap of two fingers and does again with three", async () => {
  const { page, problems, close, session, along } = await withSliceOnPhone([
    [-10, 90],
    [-35, 88],
    [-58, 70],
  ])
  await fingers(session, [...along, []])
  await page.waitForTimeout(200)
  expect(await options(page).count()).toBe(1)

  const [at] = along[1]
  const spread = [0, 1, 2].map((i) => ({ x: at.x + 45 * i, y: at.y + 100, id: i + 1 }))
  await fingers(session, [spread.slice(0, 1), spread.slice(0, 2), spread.slice(0, 1), []])
  await page.getByText("No foils yet.").waitFor()
  await fingers(session, [spread.slice(0, 1), spread.slice(0, 2), spread, spread.slice(0, 2), []])
  await options(page).first().waitFor()
  expect(await page.getByRole("button", { name: "Hairline", exact: true }).count()).toBe(0)
  expect(problems).toEqual([])
  await close()
})

it("draws with a pen, and from then on a finger only moves the page until the switch is turned off", async () => {
  const { page, problems, close } = await visit({ ...tablet, hasTouch: true })
  await options(page).first().waitFor()
  await startNewPlan(page)
  await takeTool(page, "Slice")
  const session = await page.context().newCDPSession(page)
  const places = await Promise.all(
    [
      [-10, 90],
      [-35, 88],
      [-58, 70],
    ].map(([x, y]) => onLargeView(page, "front", x, y)),
  )
  const pen = (type: "mousePressed" | "mouseMoved" | "mouseReleased", [x, y]: [number, number]) =>
    session.send("Input.dispatchMouseEvent", {
      type,
      x,
      y,
      button: "left",
      buttons: 1,
      clickCount: 1,
      pointerType: "pen",
    })
  await pen("mousePressed", places[0])
  await pen("mouseMoved", places[1])
  await pen("mouseMoved", places[2])
  await pen("mouseReleased", places[2])
  await page.waitForTimeout(200)
  expect(await options(page).count()).toBe(1)

  const finger = async () => {
    const steps = places.map(([x, y]) => [{ x, y: y + 30, id: 1 }])
    await fingers(session, [...steps, []])
    await page.waitForTimeout(200)
  }
  await finger()
  expect(await options(page).count()).toBe(1)
  await page.getByRole("button", { name: "Hairline", exact: true }).click()
  await page.getByText("Settings", { exact: true }).click()
  await page.getByRole("checkbox", { name: "Draw with pen only" }).uncheck()
  await finger()
  expect(await options(page).count()).toBe(2)
  expect(problems).toEqual([])
  await close()
})
