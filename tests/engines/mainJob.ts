import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { type SheetName, sheetNames } from "../../presets/sheets/sheetNames"
import { loadWords } from "../../web/words/every/languages"
import type { TestHost } from "../support/offlineHost"
import { readPdfText } from "../support/pdfText"
import { placeInPane } from "../support/screen"
import { type Engine, language, type PointerKind, until } from "./engine"
import { boxOf, count, pictureAtRest, press, stands, waitFor, wordsOf } from "./page"

/** What an engine shows and makes in the course of the main job. */
export type Outcome = {
  foils: string[]
  formula: string
  timing: string
  sheets: Record<string, string>
  pictures: Record<string, Buffer>
  complaints: string[]
}

const words = await loadWords(language)
/** The very name of a thing, for the page to look for. */
const called = (name: string) => `^${name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`

const foils = "[role=listbox] [role=option]"
const screen = (engine: Engine, place: number) => press(engine, `header nav li:nth-child(${place}) button`)
const atRest = "main:not([aria-busy=true])"

/** In the page: the large page has been drawn, and so has each small one in sight. */
const arePagesDrawn = `
const inSight = [...document.querySelectorAll(".small-page")].filter((page) => page.getBoundingClientRect().top < innerHeight)
return document.querySelector(".preview .sheet svg") !== null && inSight.every((page) => page.querySelector("span svg"))
`

/** The whole job: empty plan, technique, a slice by hand, grams, formula, times, four sheets, the chair, and no host. */
export async function mainJob(engine: Engine, host: TestHost, hand: PointerKind): Promise<Outcome> {
  const pictures: Outcome["pictures"] = {}
  await engine.open(host.address)
  await waitFor(engine, ".pane.large [data-hands=ready]")
  await until(`${engine.name}: the example`, async () => (await count(engine, foils)) > 5)
  await drawOnEmptyPlan(engine, hand)
  await waitFor(engine, ".foot button", called(words.placement.foot.minuteByMinute))
  pictures.placement = await pictureAtRest(engine)
  const drawn = await wordsOf(engine, foils)
  await screen(engine, 3)
  await waitFor(engine, `${atRest} h2`)
  const [formula] = await wordsOf(engine, "main")
  pictures.formula = await pictureAtRest(engine)
  await screen(engine, 4)
  await waitFor(engine, "button", called(words.timing.toChair))
  const [timing] = await wordsOf(engine, "main")
  await screen(engine, 5)
  await until(`${engine.name}: the pages in sight`, () => engine.run<boolean>(arePagesDrawn))
  pictures.sheets = await pictureAtRest(engine)
  const sheets = await saveSheets(engine)
  await firstTap(engine)
  await withoutHost(engine, host)
  const complaints = await engine.run<string[]>("return window.complaints")
  return { ...{ foils: drawn, formula, timing, sheets, pictures }, complaints }
}

async function drawOnEmptyPlan(engine: Engine, hand: PointerKind) {
  await press(engine, "header button", words.plans.bar.plans)
  await press(engine, "dialog button", called(words.plans.dialog.newPlan))
  await waitFor(engine, "main h1", called(words.plans.bar.screens.client))
  await screen(engine, 2)
  await waitFor(engine, ".pane.large [data-hands=ready]")
  await until(`${engine.name}: an empty plan`, async () => (await count(engine, foils)) === 0)
  await press(engine, ".technique")
  const laid = await until(`${engine.name}: the first technique`, () => count(engine, foils))
  await press(engine, ".tools label", called(words.placement.toolRail.tools.slice))
  const box = await boxOf(engine, ".pane.large .pane-paper")
  // Along the hairline on the head's right, mm of the front view of the default head.
  const places = slice.map(([x, y]) => placeInPane("front", box, x, y))
  await engine.stroke(places, hand)
  await until(`${engine.name}: the slice by ${hand}`, async () => (await count(engine, foils)) === laid + 1)
  await press(engine, ".tools label", called(words.placement.toolRail.tools.select))
}

const slice = [
  [-10, 84],
  [-35, 83],
  [-58, 66],
] as const

/** At the chair of the example: nobody has asked the client of an empty plan anything, and its clock does not start. */
async function firstTap(engine: Engine) {
  const { chair, timing, plans } = words
  await press(engine, "header button", plans.bar.plans)
  await press(engine, "dialog button", called(plans.dialog.fromExample))
  await screen(engine, 4)
  await press(engine, "button", called(timing.toChair))
  // Both names may begin the clock: at once where all has been asked, else by a signature that it was asked aloud.
  const sign = ".asked-aloud button"
  const begin = called(chair.start.begin)
  await until(
    `${engine.name}: the way to the clock`,
    async () => (await stands(engine, sign)) || stands(engine, "button:enabled", begin),
  )
  if (await stands(engine, sign)) {
    await press(engine, ".asked-aloud input")
    await engine.type("Ana")
    await press(engine, sign)
  }
  const isStarted = () => stands(engine, "button", called(chair.floor.isOn(1)))
  await until(`${engine.name}: the clock`, async () => {
    if (!(await isStarted()) && (await stands(engine, "button:enabled", begin)))
      await press(engine, "button", begin)
    return isStarted()
  })
  await press(engine, "button", called(chair.floor.isOn(1)))
  await waitFor(engine, "button", called(chair.floor.isOn(2)))
}

/** Saves each sheet as a PDF; gives the words of each, by its name. */
async function saveSheets(engine: Engine): Promise<Outcome["sheets"]> {
  const found: Outcome["sheets"] = {}
  for (const [i, sheet] of sheetNames.entries()) {
    await press(engine, `main label:nth-child(${i + 1}):has(input[name=sheet])`)
    await press(engine, "main button", called(words.sheets.screen.save))
    found[sheet] = await readPdfText(
      await until(`${engine.name}: ${sheet}`, async () => savedFile(engine.downloads, endings[sheet])),
    )
  }
  return found
}

const endings: Record<SheetName, RegExp> = {
  placement: /\d\.pdf$/,
  technique: /technique\.pdf$/,
  "take-home": /take-home\.pdf$/,
  record: /record\.pdf$/,
}

/** A file that has been saved to its end: a PDF ends in %%EOF. */
function savedFile(folder: string, ending: RegExp): Buffer | null {
  const name = readdirSync(folder).find((file) => ending.test(file))
  const bytes = name ? readFileSync(join(folder, name)) : null
  return bytes?.subarray(-8).includes("%%EOF") ? bytes : null
}

/** The tablet’s promise: the service goes on after a reload with the host gone. */
async function withoutHost(engine: Engine, host: TestHost) {
  await until(`${engine.name}: the whole app kept`, () =>
    engine.run<boolean>("return Boolean(navigator.serviceWorker && navigator.serviceWorker.controller)"),
  )
  const before = await engine.run<string[]>("return window.complaints")
  await host.stop()
  await engine.run("window.isOld = true; setTimeout(() => location.reload())")
  await until(`${engine.name}: the page anew`, () => engine.run<boolean>("return window.isOld !== true"))
  await until(`${engine.name}: the chair again`, () =>
    stands(engine, "button", called(words.chair.floor.isOn(2))),
  )
  await engine.run("window.complaints.unshift(...arguments[0])", before)
}
