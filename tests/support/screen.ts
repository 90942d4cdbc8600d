import type { Locator, Page } from "playwright-core"
import { hairlineParting } from "../../geometry/parting/parting"
import { viewPoint } from "../../geometry/surface/frames"
import { fixedViews, fromView, toView, type ViewName } from "../../geometry/surface/views"
import { fitCamera, shareAboveHairline, toScreen } from "../../web/canvas/paint/camera"
import { newPlan } from "../../web/core/document/newPlan"
import { headOf } from "../../web/core/figures/measured"
import { hairlineFrame, hasHairlineFrame } from "../../web/drawing/workFrame"
import { handsReady } from "./browser"

/** The screen by what a person sees on it: words, roles and places on the head. */

/** Open a plan from a file, as the plans dialog does. */
export async function openPlanFile(page: Page, file: string) {
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByLabel("Plan file").setInputFiles(file)
  await page.getByRole("dialog").waitFor({ state: "hidden" })
  await page.locator(".pane.large canvas").first().waitFor()
}

export async function startNewPlan(page: Page) {
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByRole("button", { name: "New plan" }).click()
  await page.getByRole("dialog").waitFor({ state: "hidden" })
  await goTo(page, "Placement")
  await page.getByText("No foils yet.").waitFor()
  await handsReady(page)
}

/** The same by keys alone. */
export async function startNewPlanByKeys(page: Page) {
  await tabTo(page, /Plans…/)
  await page.keyboard.press("Enter")
  await page.getByRole("dialog").waitFor()
  await tabTo(page, /^New plan/)
  await page.keyboard.press("Enter")
  await page.getByRole("dialog").waitFor({ state: "hidden" })
  await tabTo(page, /^Placement$/)
  await page.keyboard.press("Enter")
  await page.getByText("No foils yet.").waitFor()
  await handsReady(page)
}

export const goTo = (page: Page, screen: "Client" | "Placement" | "Formula" | "Timing" | "Sheets") =>
  page.getByRole("navigation", { name: "The service" }).getByRole("button", { name: screen }).click()

/** Choose what the hand does. */
export const takeTool = (
  page: Page,
  name: "Select" | "Slice" | "Weave" | "Backcomb" | "Leave out" | "Divide",
) => page.locator(".tools").getByRole("radio", { name, exact: true }).check()

export const options = (page: Page): Locator =>
  page.getByRole("listbox", { name: /^Foils/ }).getByRole("option")

const axes = headOf(newPlan(new Date())).axes

/** Where a place of a view (mm of its page, default head) lies on the screen, in the box of its pane, while it shows the hairline or has no frame of its own. */
export function placeInPane(view: ViewName, box: Box, x: number, y: number): [number, number] {
  const [left, top] = toScreen(
    fitCamera(
      hairlineFrame(view, axes),
      box.width,
      box.height,
      hasHairlineFrame(view) ? shareAboveHairline : undefined,
    ),
    viewPoint(x, y),
  )
  return [box.x + left, box.y + top]
}

export type Box = { x: number; y: number; width: number; height: number }

/** Where something lies once it has stood still over two frames and the large view fills its paper. */
export const atRest = (target: Locator): Promise<Box> =>
  target.evaluate(
    (element) =>
      new Promise<Box>((done) => {
        const boxOf = ({ x, y, width, height }: DOMRect): Box => ({ x, y, width, height })
        const isFilled = () => {
          const paper = document.querySelector(".pane.large .pane-paper")
          const drawing = paper?.querySelector("canvas")
          if (!paper || !drawing) return paper === null
          const [outer, inner] = [paper, drawing].map((each) => each.getBoundingClientRect())
          return Math.abs(outer.width - inner.width) < 1 && Math.abs(outer.height - inner.height) < 1
        }
        let before = ""
        const look = () => {
          const box = boxOf(element.getBoundingClientRect())
          const now = JSON.stringify(box)
          if (now === before && isFilled()) return done(box)
          before = now
          requestAnimationFrame(look)
        }
        look()
      }),
  )

/** Where a place of the large view lies on the screen. */
export async function onLargeView(
  page: Page,
  view: ViewName,
  x: number,
  y: number,
): Promise<[number, number]> {
  return placeInPane(view, await atRest(page.locator(".pane.large .pane-paper")), x, y)
}

/** Draw with the mouse through places of the front view, mm. Lifts at the end unless told to hold. */
export async function drawOnFront(page: Page, places: readonly (readonly [number, number])[], hold = false) {
  for (const [i, [x, y]] of places.entries()) {
    await page.mouse.move(...(await onLargeView(page, "front", x, y)), { steps: 6 })
    if (i === 0) await page.mouse.down()
  }
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20))))
  if (!hold) await page.mouse.up()
}

/** Where, in the front view, a share of the way along the parting lies that a stroke along the hairline makes, mm. */
export function placeOfHairlineParting(places: readonly (readonly [number, number])[], share: number) {
  const head = headOf(newPlan(new Date()))
  const { front } = fixedViews
  const [from, to] = [places[0], places[places.length - 1]].map(([x, y]) => {
    const at = fromView(front, head.surface, viewPoint(x, y))
    if (!at) throw new Error("the stroke leaves the head")
    return head.hairline.coordinates(at)
  })
  const { alongMm, behindMm } = from
  const made = hairlineParting(head, { fromAlongMm: alongMm, toAlongMm: to.alongMm, behindMm })
  if ("refused" in made) throw new Error(made.refused)
  return toView(front, head.surface, made.parting[Math.round(share * (made.parting.length - 1))])
}

/** Where a place so far along the hairline and so far behind it lies in the front view of the default head, mm. */
export function placeBehind(alongMm: number, behindMm: number): readonly [number, number] {
  const head = headOf(newPlan(new Date()))
  const made = hairlineParting(head, { fromAlongMm: alongMm - 3, toAlongMm: alongMm + 3, behindMm })
  if ("refused" in made) throw new Error(made.refused)
  return toView(fixedViews.front, head.surface, made.parting[made.parting.length >> 1])
}

/** Press Tab until the focus is on something of this name; a person at the keyboard does no more. */
export async function tabTo(page: Page, name: RegExp, most = 80, key = "Tab") {
  for (let i = 0; i < most; i++) {
    const focused = await page.evaluate(() => {
      const element = document.activeElement
      if (!element || element === document.body) return ""
      const labels =
        element instanceof HTMLInputElement
          ? [...(element.labels ?? [])].map((label) => label.textContent)
          : []
      return [element.getAttribute("aria-label"), ...labels, element.textContent].filter(Boolean).join(" ")
    })
    if (name.test(focused)) return
    await page.keyboard.press(key)
  }
  throw new Error(`Tab never reached ${name}`)
}
