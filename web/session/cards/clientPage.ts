import type { ClientCard } from "../../core/cards/card"
import type { ClientExport } from "../../core/cards/clientFile"
import type { Plan } from "../../core/document/schema"
import type { ServiceRecord } from "../../core/document/serviceRecord"
import { openPlan } from "../../core/file/planFile"
import { doneToday } from "../../core/record/doneToday"
import { lastVisit } from "../../core/record/lastVisit"
import { clientLines, peopleLines } from "../../core/record/recordLines"
import { dayIn } from "../../core/text/zonedTime"
import { htmlFile, markup } from "../../drawing/htmlFile"
import type { Words } from "../../words/en/words"
import { languageNames, languages } from "../../words/every/languages"
import { reactionWords } from "../../words/every/reactionWords"
import { say } from "../../words/say"

/** How a client's page is written: in whose words, and by the clock of which place. */
export type PageOptions = { words: Words; zone: string }

type Row = readonly [label: string, texts: readonly string[]]

/** All that is kept of one client as a page for a browser, in one file: the card, and visit by visit what was asked and done. */
export function clientPage({ madeAt, card, plans }: ClientExport, { words, zone }: PageOptions): string {
  const w = words.cards.page
  const opened = plans.map((text) => openPlan(text, () => []))
  const read = opened.flatMap((each) => (each.ok ? [each.plan] : [])).sort(latestFirst)
  const unread = opened.length - read.length
  const main = [
    "<header>",
    `<h1 dir="auto">${markup(card.name)}</h1>`,
    `<p>${markup(w.about(dayIn(zone, Date.parse(madeAt))))}</p>`,
    "</header>",
    section(w.card, cardRows(card, words)),
    ...read.map((plan) => planSection(plan, { words, zone })),
    ...onlyRemembered(read).map((service) => serviceSection(service, { words, zone })),
    ...Array.from({ length: unread }, () => section(w.unread, [[w.unreadHow, []]])),
    `<p>${markup(w.rest)}</p>`,
  ]
  return htmlFile({
    language: words.common.figures.locale,
    title: card.name,
    main: main.join("\n"),
  })
}

const latestFirst = (a: Plan, b: Plan) => b.date.localeCompare(a.date) || a.id.localeCompare(b.id)

/** Services that later plans remember while the plan they were done by is gone. */
function onlyRemembered(plans: readonly Plan[]): ServiceRecord[] {
  const own = new Set(plans.map(({ service }) => service?.startedAt))
  const earlier = plans.flatMap((plan) => plan.earlier ?? []).filter(({ startedAt }) => !own.has(startedAt))
  return [...new Map(earlier.map((service) => [service.startedAt, service])).values()]
}

const section = (title: string, rows: readonly Row[]) =>
  [
    "<section>",
    `<h2 dir="auto">${markup(title)}</h2>`,
    "<dl>",
    ...rows.flatMap(([label, texts]) => [
      `<dt>${markup(label)}</dt>`,
      ...texts.map((text) => `<dd dir="auto">${markup(text)}</dd>`),
    ]),
    "</dl>",
    "</section>",
  ].join("\n")

const lines = (text: string) => text.split("\n").filter((line) => line.trim() !== "")

const some = (label: string, texts: readonly string[]): Row[] => (texts.length > 0 ? [[label, texts]] : [])

function cardRows({ phone, consent, sheetLanguage, allergies, note }: ClientCard, words: Words): Row[] {
  const { card, allergies: said, page } = words.cards
  const language = languageNames.find((name) => name === sheetLanguage)
  return [
    ...some(card.phone, phone ? [phone] : []),
    [
      card.consent,
      consent ? [words.common.answers[consent.said], card.consentOn(consent.on)] : [page.noneSaid],
    ],
    ...some(
      said.title,
      allergies.map(({ kind, to, since }) => [said.kinds[kind], to, since].filter(Boolean).join(", ")),
    ),
    ...some(card.sheetLanguage, language ? [languages[language]] : []),
    ...some(card.note, lines(note)),
  ]
}

function planSection(plan: Plan, options: PageOptions): string {
  const { words, zone } = options
  const w = words.cards.page
  const done = doneToday(plan, zone)
  const told = words.record.told[done.isDone ? "done" : "planned"]
  return section(w.visit(done.day, plan.name.trim() || words.plans.untitled), [
    ...some(
      done.isDone ? w.done : w.planned,
      done.lines.map((line) => say(told, line)),
    ),
    ...(plan.service ? serviceRows(plan.service, options) : []),
    ...askedRows(plan, options),
    ...some(words.cards.last.note, lines(plan.note)),
  ])
}

/** What was asked, seen and tested; lines of one kind stand under one label. */
function askedRows(plan: Plan, { words, zone }: PageOptions): Row[] {
  const { labels, lines: sentences } = words.record
  const rows = new Map<string, string[]>()
  let label = ""
  for (const line of [...clientLines(plan, zone), ...peopleLines(plan)]) {
    if (line.code !== "hair") label = labels[line.code]
    rows.set(label, [...(rows.get(label) ?? []), say(sentences, line)])
  }
  const { which, when, how } = plan.consultation?.otherAllergy ?? { which: "", when: "", how: "" }
  return [
    ...rows.entries(),
    ...some(
      words.cards.allergies.title,
      [which, when, how].some(Boolean) ? [which, when, how].filter(Boolean) : [],
    ),
  ]
}

const serviceSection = (service: ServiceRecord, options: PageOptions) =>
  section(
    options.words.cards.page.earlier(dayIn(options.zone, Date.parse(service.startedAt))),
    serviceRows(service, options),
  )

function serviceRows(service: ServiceRecord, { words, zone }: PageOptions): Row[] {
  const seen = lastVisit({ earlier: [service] }, zone)
  if (!seen) return []
  const w = words.cards.last
  return [
    ...some(
      w.reactions,
      seen.reactions.map((reaction) => reactionWords(reaction, words)),
    ),
    ...some(w.formula, [
      ...seen.bowls.map((bowl) => w.bowl({ ...bowl, volume: bowl.developerVolume })),
      ...seen.toners.map(({ product, minutesOn }) =>
        w.toner({ product: product ?? w.unknown, minutes: minutesOn }),
      ),
    ]),
    ...some(w.foils, seen.foils.map(words.cards.page.foil)),
  ]
}
