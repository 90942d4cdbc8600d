import type { PaperName } from "../../../../presets/sheets/papers"
import type { SheetName } from "../../../../presets/sheets/sheetNames"
import type { Tools } from "../../tools"
import { cards } from "./cards"
import { handout } from "./handout"
import { lesson } from "./lesson"
import { map } from "./map"
import type { Names } from "./names"
import { views } from "./views"

/** Paper, and the screen it is chosen on. */
export const sheets = (t: Tools, common: Names) => ({
  done: {
    lesson: "Change the handout’s text",
    "lesson-as-drawn": "Handout: back to what the plan says",
  },
  screen: screen(t),

  /** As each sheet is chosen. */
  names: {
    placement: "Placement map",
    technique: "Technique handout",
    "take-home": "Take home",
    record: "Record card",
  } satisfies Record<SheetName, string>,
  /** Who reads it, and what to mind when it is printed. */
  asides: {
    placement:
      "The map goes on the mirror, where others can read it, so it shows initials only. Print at 100 % (not “fit to page”) so the ruler is life size.",
    technique:
      "For students: what is drawn, step by step, with a head to draw on, faults, a self-check and the assessor’s box. No client, no date and no notes are on it.",
    "take-home":
      "For the client, in large print: what was done, skin and scalp, home care, when to come back. No formula, no health answers.",
    record:
      "For the salon: the hair, what was asked, the mixes, planned and actual times, checks, and the notes for next time. It holds health answers.",
  } satisfies Record<SheetName, string>,

  /** The head of each page. */
  heading: {
    unnamed: "Plan without a name",
    client: (initials: string) => `Client ${initials}`,
    page: (number: number, count: number) => `page ${t.whole(number)} of ${t.whole(count)}`,
    datedPage: (day: string, number: number, count: number) =>
      `${t.date(day)}, page ${t.whole(number)} of ${t.whole(count)}`,
  },

  cautions: cautions(),
  map: map(t, common),
  views: views(),
  cards: cards(t),
  handout: handout(),
  lesson: lesson(t),
  /** What a reader’s program is told of a drawing. */
  pictures: {
    view: (view: string, foils: readonly number[]) =>
      foils.length === 0
        ? `Drawing of the head: ${view}.`
        : `Drawing of the head: ${view}. On it: ${common.foils(foils)}.`,
    clock: "Bars of the clock; the same minutes stand beside them in numbers.",
    comb: "A ruler at life size.",
    stitches: "Stitches at life size.",
  },
})

const screen = (t: Tools) => ({
  title: "Sheets",
  sheet: "Sheet",
  paper: "Paper",
  papers: { a4: "A4", letter: "Letter" } satisfies Record<PaperName, string>,
  language: "Language of the sheet",
  change: "Change",
  front: "Front view",
  fronts: { facing: "As you face the client", mirror: "As seen in the mirror" },
  save: "Save PDF",
  print: "Print…",
  share: "Share…",
  readAsPage: "Read as a page",
  readHint:
    "One page for a browser or a phone, without a script: text that can be made larger or read aloud.",
  cancel: "Cancel",
  saved: (file: string) => `${file} saved`,
  pages: "Pages",
  page: (number: number) => `Page ${t.whole(number)}`,
  pageOf: (number: number, count: number) => `Page ${t.whole(number)} of ${t.whole(count)}`,
  asPrinted: "Page as printed",
  working: "Laying out the pages…",
  workingOn: (done: number, count: number) => `Laying out step ${t.whole(done)} of ${t.whole(count)}…`,
  printing: (done: number, count: number) => `Printing page ${t.whole(done)} of ${t.whole(count)}…`,
  stopped: "The pages were not laid out.",
  again: "Lay out the pages",
  noFont: "The font for the sheets did not load. Check the connection and reload.",
  noWords: "The language of the sheet did not load. Check the connection and choose it again.",
  noPdf: "The PDF could not be made. Reload the page and try again.",
})

const cautions = () => ({
  /** What every placement map and handout says, in the fewest words. */
  all: [
    "Maker’s directions first, then local law and licence rules, then your judgement. This sheet only plans.",
    "Gloves on. Keep off eyes, lashes, brows. In an eye: rinse at once, 20 minutes.",
    "Ventilate when mixing. Cover the bowl loosely; never seal it.",
    "No heat unless the directions allow it. No metal bowls or clips.",
    "No flames, hot tools or aerosols near product. Used foils go into water, not into the bin.",
    "Ask the client to report any warmth, tingling or pain.",
    "Hot or swelling foil, stinging or burning: take it off and rinse with plenty of cool water at once.",
    "Check every 5 to 10 minutes. Stop at the target level, the maker’s maximum time, or when it dries, whichever is first.",
    "Hairs, grams and minutes are estimates: read the range.",
  ],
  localRule: "Local rule:",
  codedLetters: "Some letters cannot be printed here. Each of them stands as its code, such as [U+6F22].",
})

export type SheetsWords = ReturnType<typeof sheets>
