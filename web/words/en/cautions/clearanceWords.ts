import type { Clearance } from "../../../core/cautions/clearance"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"

type Told = Pick<Clearance, "state" | "day" | "by"> & {
  stops: readonly unknown[]
  notAsked: readonly unknown[]
}

/** The three states of a plan: do not mix, not asked yet, cleared. */
export function clearanceWords(t: Tools) {
  const stops = (count: number) => t.count(count, { one: "Do not mix: # stop", other: "Do not mix: # stops" })
  const notAsked = (count: number) => t.count(count, { one: "Not asked yet: #", other: "Not asked yet: #" })
  const clearedBy = ({ by, day }: Told) => {
    const things = t.and([
      t.count(by.answers, { one: "# answer", other: "# answers" }),
      ...(by.tests > 0
        ? [t.count(by.tests, { one: "# patch test read clear", other: "# patch tests read clear" })]
        : []),
      ...(by.letters > 0
        ? [t.count(by.letters, { one: "# doctor’s letter", other: "# doctor’s letters" })]
        : []),
      ...(by.overrides > 0 ? [t.count(by.overrides, { one: "# override", other: "# overrides" })] : []),
    ])
    return by.askedBy.trim() === ""
      ? `Cleared on ${t.date(day)} by ${things}.`
      : `Cleared on ${t.date(day)} (asked by ${by.askedBy}) by ${things}.`
  }
  return {
    /** In the top bar. */
    pill: (told: Told) =>
      told.state === "stop"
        ? stops(told.stops.length)
        : told.state === "not-asked"
          ? notAsked(told.notAsked.length)
          : `Cleared today`,
    /** At the head of a screen. */
    head: (told: Told) =>
      told.state === "stop"
        ? `${stops(told.stops.length)}.`
        : told.state === "not-asked"
          ? `${notAsked(told.notAsked.length)}.`
          : clearedBy(told),
    /** One sentence for the command. */
    sentence: (told: Told) =>
      told.state === "stop"
        ? t.count(told.stops.length, {
            one: "DO NOT MIX: # stop holds the plan.",
            other: "DO NOT MIX: # stops hold the plan.",
          })
        : told.state === "not-asked"
          ? t.count(told.notAsked.length, {
              one: "NOT CLEARED: # thing has not been asked yet.",
              other: "NOT CLEARED: # things have not been asked yet.",
            })
          : clearedBy(told),
    list: "What is missing",
    stopsTitle: "Do not mix",
    notAskedTitle: "Not asked yet",
    none: "Nothing is missing for today.",
    goTo: "Go to",
    close: "Close",
    /** What may be answered together, aloud. */
    aloud: {
      title: "Asked aloud",
      aside: (count: number) =>
        t.count(count, {
          one: "One question may be answered with “no” by asking it aloud. Your name is kept with the answer.",
          other:
            "# questions may be answered with “no” by asking them aloud. Your name is kept with the answers.",
        }),
      by: "Your name",
      sign: "Asked aloud: no to all of these",
      wanting: "Enter your name first.",
    },
    /** At the chair, before the clock starts. */
    chairStop: "Do not mix. Resolve the stops first.",
    chairNotAsked: "Ask these before the clock starts.",
    chairHeld: (piece: Piece) =>
      `A stop came up. Begin no ${{ foil: "more foils", panel: "more panels", both: "more foils or panels" }[piece]} and mix no bowl. Check and rinse what is on.`,
    chairOpen: (piece: Piece) =>
      `A question is open again. Begin no ${{ foil: "more foils", panel: "more panels", both: "more foils or panels" }[piece]} and mix no bowl before it is answered. Check and rinse what is on.`,
  }
}
