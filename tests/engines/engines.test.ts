import { mkdirSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, newVisitor, openBrowser } from "../support/browser"
import { openHost, type TestHost, thisBuild } from "../support/offlineHost"
import { alike } from "./alike"
import { openChromium } from "./chromium"
import { comparePictures } from "./comparePictures"
import type { Engine, PointerKind } from "./engine"
import { openFirefox } from "./firefox"
import { mainJob, type Outcome } from "./mainJob"
import { withProbe } from "./probe"
import { openWebKit } from "./webkit"

// Set by npm test for the engines that are here; without them these tests are skipped.
const { FIREFOX_PATH: firefox, WEBKIT_DRIVER: driver, WEBKIT_BROWSER: webkit } = process.env

let host: TestHost
let chromium: Outcome
let viewer: Page

async function outcomeIn(open: () => Promise<Engine>, hand: PointerKind): Promise<Outcome> {
  host = await openHost(withProbe(thisBuild()))
  const engine = await open()
  try {
    const outcome = await mainJob(engine, host, hand)
    keepPictures(engine.name, outcome.pictures)
    return outcome
  } catch (fault) {
    keepPictures(`${engine.name}-fault`, { window: await engine.picture() })
    throw fault
  } finally {
    await engine.quit()
    await host.stop()
  }
}

/** For a person to look at, where a folder is named. */
function keepPictures(name: string, pictures: Outcome["pictures"]) {
  const folder = process.env.ENGINE_PICTURES
  if (!folder) return
  mkdirSync(folder, { recursive: true })
  for (const [screen, picture] of Object.entries(pictures))
    writeFileSync(join(folder, `${screen}-${name}.png`), picture)
}

beforeAll(async () => {
  await openBrowser()
  viewer = await (await newVisitor()).newPage()
  chromium = await outcomeIn(openChromium, "mouse")
})
afterAll(closeBrowser)

const size = "1366x1024"

/**
 * Seen: at most 2.6 of 255 on average and 0.5 % of the squares far apart, from glyphs set half a pixel elsewhere, a wrapped
 * line, the clock of the service and the switch that a pen turns on. Another screen is 11 on average and 5.6 % at least.
 */
const mostMeanGrey = 5
const mostFarShare = 0.015

/** Each text of an outcome beside the one it must say the same as. */
const textsOf = (one: Outcome, other: Outcome): [string, string][] => [
  [one.foils.at(-1) ?? "", other.foils.at(-1) ?? "the one drawn by hand"],
  [one.formula, other.formula],
  [one.timing, other.timing],
  ...Object.entries(one.sheets).map(([sheet, text]): [string, string] => [text, other.sheets[sheet]]),
]

const engines = [
  ["WebKit", driver && webkit && (() => openWebKit(driver, webkit)), "pen"],
  ["Firefox", firefox && (() => openFirefox(firefox)), "touch"],
] as const

it("does the main job in Chromium without a complaint", () => {
  expect(chromium.complaints).toEqual([])
})

describe.each(engines)("%s", (_, open, hand) => {
  it.skipIf(!open)(
    `does the main job with a ${hand}, to the same figures, sheets and pictures, and goes on without a host`,
    async () => {
      const outcome = await outcomeIn(open as () => Promise<Engine>, hand)
      expect(outcome.complaints).toEqual([])
      // What a technique lays is the same to the last figure, what a hand draws nearly so.
      expect(outcome.foils.slice(0, -1)).toEqual(chromium.foils.slice(0, -1))
      for (const [said, expected] of textsOf(outcome, chromium))
        expect(alike(said, expected), `${said}\n${expected}`).toBe(true)
      for (const [screen, picture] of Object.entries(outcome.pictures)) {
        const { sizes, meanGrey, farShare } = await comparePictures(
          viewer,
          chromium.pictures[screen],
          picture,
        )
        expect(sizes).toBe(`${size} ${size}`)
        expect(meanGrey, screen).toBeLessThan(mostMeanGrey)
        expect(farShare, screen).toBeLessThan(mostFarShare)
      }
    },
  )
})
