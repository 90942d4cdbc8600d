import { homeCare, skinSigns } from "../../../presets/sheets/aftercare"
import { visitLimits } from "../../../presets/timing/visitLimits"
import { type Contact, contactOf } from "../../core/document/salon"
import type { Plan } from "../../core/document/schema"
import { type DoneToday, doneToday, foilsDone } from "../../core/record/doneToday"
import { type Returns, returnDates } from "../../core/record/returnDates"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"
import type { Reading } from "../setting/largePrint"
import type { SheetOptions } from "../setting/sheetOptions"

export type TakeHomePart = { title: string; readings: readonly Reading[] }

/** All that is said on the sheet to take home, on paper and on a page for a screen: the first part stands beside the picture. */
export type TakeHomeWords = {
  day: string
  about: string
  parts: readonly [TakeHomePart, ...TakeHomePart[]]
  picture: { alt: string; caption: string }
}

export function takeHomeWords(
  plan: Plan,
  { zone, words, contact: here }: Pick<SheetOptions, "zone" | "words" | "contact">,
): TakeHomeWords {
  const done = doneToday(plan, zone)
  const contact = contactOf(plan, here)
  const said = words.sheets.cards.takeHome
  const { pictures, views } = words.sheets
  const foils = foilsDone(plan).map(({ mapNumber }) => mapNumber)
  return {
    day: done.day,
    about: said.about,
    parts: [
      { title: done.isDone ? said.done : said.planned, readings: doneReadings(done, words) },
      { title: said.skin, readings: skinReadings(contact, words) },
      {
        title: said.care,
        readings: homeCare.map((care) => ({ label: said.careWhen[care], text: said.careText[care] })),
      },
      { title: said.back, readings: returnReadings(returnDates(done.day, done.isToned), contact, words) },
    ],
    picture: { alt: pictures.view(views.frontInMirror, foils), caption: said.mirror },
  }
}

const doneReadings = ({ lines, isDone }: DoneToday, { sheets, record }: Words): Reading[] => [
  ...lines.map((line) => ({ text: say(isDone ? record.told.done : record.told.planned, line) })),
  { text: sheets.cards.takeHome.picture },
]

const skinReadings = ({ emergency }: Contact, { sheets }: Words): Reading[] =>
  skinSigns.map((sign) => {
    const { breathing, signs } = sheets.cards.takeHome
    return { text: sign === "breathing" ? breathing(emergency) : signs[sign] }
  })

function returnReadings(
  { toner, frame, testBy }: Returns,
  { name, phone }: Contact,
  { sheets }: Words,
): Reading[] {
  const said = sheets.cards.takeHome
  return [
    ...(toner ? [{ label: said.toner, text: said.days(toner.from, toner.to) }] : []),
    { label: said.frame, text: said.regrowth(frame.from, frame.to) },
    { label: said.test, text: said.testBy(visitLimits.alertTestHours, testBy) },
    { label: said.questions, text: said.ask(name, phone) },
    { label: said.mind, text: said.defers },
  ]
}
