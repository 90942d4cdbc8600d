import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { type SheetName, sheetNames } from "../../presets/sheets/sheetNames"
import type { TestHost } from "../support/offlineHost"
import { readPdfText } from "../support/pdfText"
import { placeInPane } from "../support/screen"
import { type Engine, type PointerKind, until } from "./engine"
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

const foils = "[role=listbox] [role=option]"
const screen = (engine: Engine, place: number) => press(engine, `header nav li:nth-child(${place}) button`)
const atRest = "main:not([aria-busy=true])"

/** The whole job: empty plan, technique, a slice by hand, grams, formula, times, the first tap, four sheets, and no host. */
export async function mainJob(engine: Engine, host: TestHost, hand: PointerKind): Promise<Outcome> {
  const pictures: Outcome["pictures"] = {}
  await engine.open(host.address)
  await waitFor(engine, ".pane.large [data-hands=ready]")
  await until(`${engine.name}: the example`, async () => (await count(engine, foils)) > 5)
  await drawOnEmptyPlan(engine, hand)
  pictures.placement = await pictureAtRest(engine)
  const drawn = await wordsOf(engine, foils)
  await screen(engine, 3)
  await waitFor(engine, `${atRest} h2`)
  const [formula] = await wordsOf(engine, "main")
  pictures.formula = await pictureAtRest(engine)
  await screen(engine, 4)
  await waitFor(engine, "button", "^Go to the chair")
  const [timing] = await wordsOf(engine, "main")
  await firstTap(engine)
  await screen(engine, 5)
  await waitFor(engine, ".preview svg")
  pictures.sheets = await pictureAtRest(engine)
  const sheets = await saveSheets(engine)
  await withoutHost(engine, host)
  const complaints = await engine.run<string[]>("return window.complaints")
  return { ...{ foils: drawn, formula, timing, sheets, pictures }, complaints }
}

async function drawOnEmptyPlan(engine: Engine, hand: PointerKind) {
  await press(engine, "header button", "Plans…")
  await press(engine, "dialog button", "^New plan")
  await until(`${engine.name}: an empty plan`, async () => (await count(engine, foils)) === 0)
  await press(engine, "button", "Bright frame")
  await until(`${engine.name}: the technique`, async () => (await count(engine, foils)) === 6)
  await press(engine, ".tools label", "^Slice")
  const box = await boxOf(engine, ".pane.large .pane-paper")
  // Along the hairline on the head's right, mm of the front view of the default head.
  const places = slice.map(([x, y]) => placeInPane("front", box, x, y))
  await engine.stroke(places, hand)
  await until(`${engine.name}: the slice by ${hand}`, async () => (await count(engine, foils)) === 7)
  await press(engine, ".tools label", "^Select")
}

const slice = [
  [-10, 84],
  [-35, 83],
  [-58, 66],
] as const

async function firstTap(engine: Engine) {
  await press(engine, "button", "^Go to the chair")
  await press(engine, "button", "^Start")
  await press(engine, "button", "^Foil 1 is on")
  await waitFor(engine, "button", "^Foil 2 is on")
  await press(engine, "button", "^Leave")
  await waitFor(engine, "header nav")
}

/** Saves each sheet as a PDF; gives the words of each, by its name. */
async function saveSheets(engine: Engine): Promise<Outcome["sheets"]> {
  const found: Outcome["sheets"] = {}
  for (const [i, sheet] of sheetNames.entries()) {
    await press(engine, `main label:nth-child(${i + 1}):has(input[name=sheet])`)
    await press(engine, "main button", "^Save PDF")
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
  await until(`${engine.name}: the chair again`, () => stands(engine, "button", "^Foil 2 is on"))
  await engine.run("window.complaints.unshift(...arguments[0])", before)
}
