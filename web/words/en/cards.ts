import { visitLimits } from "../../../presets/timing/visitLimits"
import type { ComesFor, DayToCome } from "../../core/calendar/daysToCome"
import type { CardColour } from "../../core/cards/card"
import type { CardOrder, Due } from "../../core/cards/cardList"
import type { AllergyKind } from "../../core/document/consultation"
import type { Piece } from "../../core/kinds/kindRecord"
import { coatLetters } from "../../core/placement/coatCodes"
import type { LastFoil } from "../../core/record/lastVisit"
import type { Growth } from "../../core/regrowth/growth"
import type { RegrowthAction } from "../../core/regrowth/regrow"
import type { RegrowthState } from "../../core/regrowth/sectionStates"
import type { Tools } from "../tools"
import { pieces } from "./common/pieces"

/** The client over time: cards, the visit before, and what has grown since. */
export const cards = (t: Tools) => ({
  done: {
    "put-on-card": "Put the plan on a card",
    regrow: "Choose what is done with the regrowth",
    "propose-regrowth": "Propose the regrowth",
    "measure-regrowth": "Measure the regrowth",
  },
  title: "Clients",
  open: "Clients…",
  find: "Find a client",
  order: "Sort by",
  orders: { name: "Name", last: "Last visit", due: "Next due" } satisfies Record<CardOrder, string>,
  newName: "Initials or name",
  make: "New card",
  none: "No cards yet. Cards stay in this browser.",
  nothingFound: "No card found.",
  more: (count: number) => t.count(count, { one: "Show # more", other: "Show # more" }),
  lastDay: (day: string | null) => (day === null ? "no visit yet" : `last visit ${t.date(day)}`),
  due: (due: Due) =>
    due.planned
      ? `planned for ${t.date(due.day)}`
      : due.from === due.to
        ? `due ${t.date(due.from)}`
        : `due ${t.days(due.from, due.to)}`,
  all: "All clients",
  unread: (why: string) => `This card cannot be read and stays as it is. ${why}`,
  import: {
    open: "Import names…",
    file: "File of names",
    how: "A text or CSV file: one name a line, or a table with columns name, phone, note.",
    found: (count: number) => t.count(count, { one: "# new name", other: "# new names" }),
    known: (count: number) => t.count(count, { one: "# is here already", other: "# are here already" }),
    empty: (count: number) => t.count(count, { one: "# row without a name", other: "# rows without a name" }),
    unfit: (rows: readonly number[]) => `rows that do not fit on a card: ${rows.join(", ")}`,
    left: (count: number) => t.count(count, { one: "# row too many", other: "# rows too many" }),
    told: (items: readonly string[]) => `${t.capital(t.and(items))}.`,
    take: (count: number) => t.count(count, { one: "Make # card", other: "Make # cards" }),
    tooLarge: (mostMb: number) => `This file is larger than ${mostMb} MB. Nothing of it was read.`,
  },
  card: {
    name: "Initials or name",
    phone: "Phone",
    colour: "Colour of the card",
    colours: {
      none: "None",
      blue: "Blue",
      orange: "Orange",
      green: "Green",
      purple: "Purple",
    } satisfies Record<CardColour, string>,
    sheetLanguage: "Language of the client’s sheets",
    note: "Notes",
    consent: "The client lets this card be kept",
    consentOn: (day: string) => `Said on ${t.date(day)}.`,
  },
  allergies: {
    title: "Allergies that stand",
    why: "They stop every plan of this client until they are confirmed on the day. An answer of today takes none of them back.",
    kind: "Allergy to",
    kinds: {
      dye: "Hair dye or lightener",
      other: "Something else",
      "not-known": "Not known",
    } satisfies Record<AllergyKind, string>,
    to: "To what",
    since: "Since when",
    add: "Add an allergy",
    remove: (to: string) => `Remove the allergy ${to}`.trim(),
  },
  visits: {
    title: "Visits",
    none: "No plan is on this card yet.",
    line: ({ day, served }: { day: string | null; served: boolean }) =>
      `${day === null ? "no date" : t.date(day)}, ${served ? "done" : "planned"}`,
    openNow: "open now",
    next: "Next visit, today",
    nextHow: "A new plan for today from the latest one. What belongs to the day is asked again.",
    putHere: "Put the open plan on this card",
    takeOff: "Take the open plan off this card",
  },
  /** Days to come as a file for the calendar of the salon or the client. */
  calendar: {
    add: "Add to a calendar",
    holds: "A file with the initials and the days, nothing else. Each is told the day before.",
    fileName: "days",
    title: ({ what, isTest }: DayToCome, initials: string) => {
      const days = {
        visit: "Visit",
        toner: "Toner due",
        frame: "Face frame due",
      } satisfies Record<ComesFor, string>
      return [isTest ? "Patch test on by today" : days[what], initials]
        .filter((part) => part !== "")
        .join(": ")
    },
    text: ({ isTest, day, until }: DayToCome) =>
      isTest
        ? `At least ${visitLimits.alertTestHours} hours before the visit, and longer where the maker says so.`
        : until === null
          ? "What belongs to the day is asked again."
          : `Between ${t.date(day)} and ${t.date(until)}.`,
  },
  merge: {
    title: "Merge with another card",
    how: "For two cards of one person. Notes, allergies and visits of both stay.",
    ask: (one: string, other: string) =>
      `${one} and ${other} become one card with the name ${one}. This cannot be undone.`,
    do: "Merge",
  },
  remove: {
    open: "Delete this card",
    ask: (name: string, plans: number) =>
      plans === 0
        ? `The card of ${name} goes for good, with its notes and allergies.`
        : `The card of ${name} goes for good, with its notes and allergies. ${t.count(plans, {
            one: "Its # plan stays among the plans, on no card.",
            other: "Its # plans stay among the plans, on no card.",
          })}`,
    do: "Delete for good",
  },
  /** What a client may ask for: all that is kept, or that nothing is. */
  rights: {
    title: "What is kept of this client",
    saveFile: "Save everything of this client",
    savePage: "Save it as a page to read",
    holds:
      "Both hold the client’s health answers and are not locked. Partline opens the file again; the page is for reading. A service that runs at the chair is in neither.",
    erase: "Erase this client for good",
    ask: (name: string, plans: number) =>
      plans === 0
        ? `The card of ${name} is erased for good, with notes and allergies.`
        : `The card of ${name} is erased for good, with notes and allergies, and ${t.count(plans, {
            one: "its # plan, deleted or not, with all that was answered, done and seen.",
            other: "its # plans, deleted or not, with all that was answered, done and seen.",
          })}`,
    stays:
      "Techniques stay, and grams learnt from bowls, without a name. Files, sheets and backups saved before are not reached: delete them yourself. This cannot be undone.",
    do: "Erase for good",
    openFile: "Open a client’s file…",
    file: "File of one client",
    log: {
      title: "Clients saved and erased",
      none: "None yet.",
      line: ({ what, on, plans }: { what: "exported" | "erased"; on: string; plans: number }) =>
        `${t.date(on)}: one client ${what === "exported" ? "saved" : "erased"}, ${t.count(plans, { one: "# plan", other: "# plans" })}`,
    },
  },
  /** How long cards are kept: the salon is asked, nothing goes by itself. */
  retention: {
    title: "How long cards are kept",
    years: "Ask me about clients not here for",
    never: "Never ask",
    choice: (years: number) => t.count(years, { one: "# year", other: "# years" }),
    how: "Nothing is erased by itself.",
    due: (count: number, years: number) =>
      `${t.count(count, { one: "# client", other: "# clients" })} not here for ${t.count(years, { one: "# year", other: "# years" })} or longer`,
    line: (since: string) => `latest plan or change ${t.date(since)}`,
    stay: "Keep",
    stayNamed: (name: string) => `Keep ${name}`,
  },
  /** One client as a page to read. */
  page: {
    about: (day: string) => `All that is kept of this client, saved on ${t.date(day)}`,
    card: "Card",
    noneSaid: "not asked",
    visit: (day: string, plan: string) => `${t.date(day)}: ${plan}`,
    earlier: (day: string) => `Done on ${t.date(day)}`,
    done: "Done",
    planned: "Planned",
    foil: ({ number, coats, minutesOn, level }: LastFoil) =>
      [
        `Foil ${t.whole(number)}`,
        ...(coats.length === 0 ? [] : [`mix ${coatLetters(coats)}`]),
        ...(minutesOn === null ? [] : [t.minutes(Math.round(minutesOn))]),
        ...(level === null ? [] : [`level ${t.number(level)}`]),
      ].join(", "),
    unread: "A plan that cannot be read",
    unreadHow: "It stands in the file as it was written.",
    rest: "The drawing and every figure stand in the file.",
  },
  here: {
    title: "Card",
    none: "This plan is on no card.",
    choose: "Choose a card…",
    show: "Show the card",
  },
  last: {
    title: (day: string) => `Last visit, ${t.date(day)}`,
    reactions: "What went wrong",
    alarm: (what: string) => what,
    burning: (foil: number, piece?: Piece) =>
      `${t.capital(pieces(t).names([foil], piece))}: the scalp burned`,
    "stretch-stop": (foil: number, piece?: Piece) =>
      `${t.capital(pieces(t).names([foil], piece))}: the hair stretched too far`,
    limp: (foil: number, piece?: Piece) => `${t.capital(pieces(t).names([foil], piece))}: the hair was limp`,
    formula: "Formula",
    bowl: (bowl: { mix: string; product: string; volume: number; lightenerG: number; developerG: number }) =>
      `Mix ${bowl.mix}: ${bowl.product} ${t.grams(bowl.lightenerG)} + ${t.number(bowl.volume)} vol ${t.grams(bowl.developerG)}`,
    toner: (toner: { product: string; minutes: number | null }) =>
      toner.minutes === null ? toner.product : `${toner.product}, ${t.minutes(Math.round(toner.minutes))}`,
    foils: "Foils",
    foil: "Foil",
    mix: "Mix",
    minutesOn: "Minutes on",
    level: "Level seen",
    unknown: "not known",
    note: "Notes",
  },
  regrowth: {
    title: "Regrowth",
    grown: ({ growth, weeks }: { growth: Growth; weeks: number }) =>
      `${t.spread(t.whole(growth.lowMm), t.mm(growth.highMm))} grown in ${t.count(Math.round(weeks), { one: "# week", other: "# weeks" })}, reckoned`,
    measured: "Regrowth measured",
    unit: "mm",
    why: "Measure where you can: hair may grow slower than reckoned. Product on lightened hair is proposed nowhere.",
    counts: (counts: Readonly<Record<RegrowthState, number>>) =>
      `${t.whole(counts.due)} due, ${t.whole(counts.soft)} soft, ${t.whole(counts["too-early"])} too early`,
    states: {
      due: "due",
      soft: "soft, leave",
      "too-early": "too early",
    } satisfies Record<RegrowthState, string>,
    begins: (begins: Growth) =>
      `lightened from ${t.spread(t.whole(begins.lowMm), t.mm(begins.highMm))} off the scalp`,
    foil: (foil: number, piece?: Piece) => t.capital(pieces(t).names([foil], piece)),
    actions: {
      root: "Only the root",
      behind: "Half a pitch behind",
      before: "Half a pitch in front",
      keep: "As it was",
      skip: "Skip",
    } satisfies Record<RegrowthAction, string>,
    /** What the picture of a strand shows. */
    key: "Red line: no product past it. Hatched: lightened before. Broad: product of this plan.",
    picture: ({ coat, begins }: { coat: { fromMm: number; toMm: number } | null; begins: Growth }) =>
      `One strand: ${coat ? `product from ${t.whole(coat.fromMm)} to ${t.mm(coat.toMm)}` : "no product"}; lightened from ${t.spread(t.whole(begins.lowMm), t.mm(begins.highMm))} off the scalp.`,
    propose: "Only the root where due, skip the rest",
    twice: ({
      foil,
      piece,
      on,
      fromMm,
      toMm,
    }: {
      foil: number
      piece?: Piece
      on: string
      fromMm: number
      toMm: number
    }) =>
      `${t.capital(pieces(t).names([foil], piece))} would coat hair lightened on ${t.date(on)}, from ${t.whole(fromMm)} to ${t.mm(toMm)} off the scalp.`,
  },
})

export type CardsWords = ReturnType<typeof cards>
