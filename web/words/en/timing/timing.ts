import type { ViewName } from "../../../../geometry/surface/views"
import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { clashes } from "./clashes"
import { settings } from "./settings"

export const timing = (t: Tools) => {
  const found = clashes(t)
  return {
    title: "Timing",
    none: "Why there is no clock",
    toPlacement: "Draw the first foil",
    toChair: "Start at the chair",

    /** What undo calls a change of this chapter. */
    done: {
      ...found.fixes,
      "set-pace": "Change the pace",
      "set-hands": "Change who works",
      "set-people": "Change the names",
      "set-side": "Change the assistant’s side",
      "set-rinse": "Change how foils come off",
      "set-lift": "Change the levels",
      "set-booking": "Change the appointment length",
      "set-drying": "Change the drying",
      "set-heat": "Change the heat",
      "set-breaks": "Change the breaks",
      "learn-pace": "Plan with the measured pace",
      "learn-second-pace": "Plan the assistant with the measured pace",
      "set-strand": "Save a strand test",
      "remove-strand": "Remove the strand test",
      "bring-back": "Bring the foils for another day back",
      "own-visit": "Move the foils for another day to a plan of their own",
      "usual-bowls": "Share out the bowls as usual",
      "next-time": "Save the note for next time",
    },

    figures: {
      lastOn: (piece: Piece): string =>
        ({ foil: "Last foil on", panel: "Last panel on", both: "Last one on" })[piece],
      firstCheck: "First check",
      lastOff: (piece: Piece): string =>
        ({ foil: "Last foil off", panel: "Last panel off", both: "Last one off" })[piece],
      inChair: "In the chair",
      /** A minute of the visit, counted from the first parting. */
      minute: (min: number) => `minute ${t.whole(min)}`,
      noCheck: "–",
      /** A stretch of time, to five minutes: "1 h 40 to 2 h 25". */
      span: ({ low, high }: { low: number; high: number }) => {
        const [from, to] = [hours(t, low), hours(t, high)]
        return from === to ? from : `${from} to ${to}`
      },
    },

    chart: {
      title: "Minute by minute",
      name: "Chart of the visit; the table below says the same",
      min: "min",
      break: "break",
      firstRests: "colourist on break",
      secondRests: "assistant on break",
      heat: "heat",
      key: ({ limit }: { limit: string }) =>
        `Bar: time on. Outline: may be ready. ${limit}: maximum time. Dotted: a check. Triangle: mix that bowl.`,
      limit: "Red line",
    },

    head: {
      title: "The head at a minute",
      slider: "Minute of the visit",
      views: {
        front: "Front",
        right: "Client’s right",
        left: "Client’s left",
        back: "Back",
        top: "Top",
      } satisfies Record<Exclude<ViewName, "turned" | "unrolled">, string>,
      key: "Darker = longer on; black = maximum time. Dotted = not on yet. Outline = off. Shows time, not result.",
      onMap: "Show on the large map",
    },

    table: {
      title: (piece: Piece): string =>
        ({
          foil: "Times for each foil",
          panel: "Times for each panel",
          both: "Times for each foil and panel",
        })[piece],
      name: (piece: Piece): string =>
        ({
          foil: "Times of every foil",
          panel: "Times of every panel",
          both: "Times of every foil and panel",
        })[piece],
      foil: (piece: Piece): string => ({ foil: "Foil", panel: "Panel", both: "Foil or panel" })[piece],
      on: "On",
      check: "Check",
      ready: "Ready from–to",
      off: "Off",
      limit: "Max time (off by)",
      minutesOn: "Minutes on",
      what: ({ kind, place }: { kind: string; place: string }) => `${t.capital(kind)}, ${place}`,
      none: "–",
      readyRange: ({ low, high }: { low: number; high: number }) => {
        if (Number.isFinite(high)) return t.spread(t.whole(low), t.whole(high))
        return Number.isFinite(low) ? `${t.whole(low)} or not in time` : "not in time"
      },
      minute: t.whole,
    },

    after: {
      title: (piece: Piece): string =>
        ({
          foil: "After the last foil",
          panel: "After the last panel",
          both: "After the last foil or panel",
        })[piece],
      rinse: "Rinse",
      detangle: "Detangle the backcombing, wet, from the ends up",
      dry: "Dry",
      toners: {
        "root-melt": "Root melt",
        mids: "Toner, mid-lengths",
        hairline: "Toner, hairline",
      } satisfies Record<ToneZoneName, string>,
      line: ({ what, from, to }: { what: string; from: number; to: number }) =>
        `${what}: minute ${t.whole(from)} to ${t.whole(to)}`,
    },

    strand: {
      title: "Strand test",
      testedIn: "Tested in",
      mix: ({ mix, volume }: { mix: string; volume: number }) => `Mix ${mix}, ${t.number(volume)} vol`,
      otherMix: ({ product, volume }: { product: string; volume: number }) =>
        `A strand was tested in ${product} with ${t.number(volume)} vol. No mix is made so now; it still tells of the hair.`,
      before: "Level of the strand before",
      remove: "Remove the test",
      add: "Add a check of the strand",
      minutes: "Minutes on",
      level: "Level seen",
      removeRow: "Remove",
      noCurve: (mix: string) =>
        `${mix}: the sheet prints no lift for this developer, so there is no curve. Check the strand and write it down.`,
      untilThen: (fault: string) => `${fault} Until then the curve is the sheet’s own.`,
      noGoal: "Enter the target level; the minutes to check at follow.",
      curve: "Curve",
      curveName: (mix: string) =>
        `Curve of lift of ${mix} by minutes on; the sentence above says what follows from it`,
      key: "Line: the middle. Band: four in five heads. Dashed: the target level. An estimate, never a promise: the hair decides.",
      dots: "Dots: the strand.",
      borrowed: "Told by the strand in the other mix: it is the same hair.",
      misfit: "The strand does not follow the curve well: check more often.",
      minutesOn: "minutes on",
    },

    actual: {
      title: "Planned and actual",
      when: (wallMs: number) => `${t.dayAndTime(wallMs)}. Minutes count from the first parting.`,
      name: (piece: Piece): string =>
        ({
          foil: "Planned and actual times of every foil",
          panel: "Planned and actual times of every panel",
          both: "Planned and actual times of every foil and panel",
        })[piece],
      foil: (piece: Piece): string => ({ foil: "Foil", panel: "Panel", both: "Foil or panel" })[piece],
      onPlanned: "On, planned",
      onActual: "On, actual",
      minutesPlanned: "Minutes on, planned",
      minutesActual: "Minutes on, actual",
      notOn: "not on",
      none: "–",
      minute: t.whole,
    },

    lessons: {
      title: "Pace at the chair",
      name: "Minutes a foil, by person and kind",
      who: "Who",
      timed: "Foils timed",
      kind: (kind: string) => `${t.capital(kind)}, min`,
      noName: "No name given",
      foils: ({ foils, services }: { foils: number; services: number }) =>
        `${t.whole(foils)} in ${t.count(services, { one: "# service", other: "# services" })}`,
      range: ({ low, high }: { low: number; high: number }) => t.spread(t.fixed(low, 1), t.fixed(high, 1)),
      none: "–",
      planWith: (person: string) => (person ? `Plan with ${person}’s pace` : "Plan with this pace"),
      asAssistant: (person: string) => (person ? `${person} as assistant` : "Assistant with this pace"),
    },

    alarms: {
      title: "What went wrong",
      line: ({ wallMs, what }: { wallMs: number; what: string }) => `${t.dayAndTime(wallMs)}: ${what}`,
    },

    nextTime: {
      title: "Next time",
      where: "Prints on the record card, not on the map.",
    },

    /** What the headless command says of its figures. */
    command: {
      lift: "Ready times are an estimate from the lift on the product sheet. A strand test narrows it; check, and take off what is ready.",
      noLift:
        "Without --from and --to ready times are typical ones (an assumption). Check, and take off what is ready.",
    },

    assumedTitle: "What is assumed",
    ...found,
    settings: settings(t),
  }
}

function hours(t: Tools, min: number): string {
  const rounded = Math.round(min / 5) * 5
  const [whole, rest] = [Math.floor(rounded / 60), rounded % 60]
  if (whole === 0) return t.minutes(rest)
  return rest === 0 ? `${whole} h` : `${whole} h ${rest}`
}

export type TimingWords = ReturnType<typeof timing>
