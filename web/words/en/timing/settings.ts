import type { Skill } from "../../../../presets/timing/pace"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** How the visit goes: one line that says it, and the fields that change it. */
export const settings = (t: Tools) => {
  const pace: Record<Skill | "learnt", string> = {
    expert: "Expert pace",
    usual: "Usual pace",
    learner: "Learner pace",
    learnt: "Measured pace",
  }
  const people = t.spelled({ 1: "one colourist", 2: "colourist and assistant" })
  return {
    title: "How the visit goes",
    change: "Change",
    close: "Close",
    /** The settings in one line. */
    line: (now: {
      pace: Skill | "learnt"
      people: 1 | 2
      rinse: "each" | "together"
      bookingMin: number | null
      heatMin: number | null
      isDried: boolean
      breaks: number
      piece: Piece
    }) =>
      `${[
        pace[now.pace],
        people[now.people],
        now.rinse === "each" ? `each ${pieces(t).word(1, now.piece)} off when ready` : "all off in one rinse",
        ...(now.heatMin === null ? [] : [`${t.minutes(now.heatMin)} of heat`]),
        ...(now.breaks === 0 ? [] : [t.count(now.breaks, { one: "# break", other: "# breaks" })]),
        ...(now.isDried ? [] : ["not dried"]),
        now.bookingMin === null ? "appointment length not set" : `${t.minutes(now.bookingMin)} booked`,
      ].join(", ")}.`,

    pace: "Pace",
    /** A pace and its minutes per foil. */
    paceOption: ({ name, low, high }: { name: Skill | "learnt"; low: number; high: number }) =>
      `${pace[name]} ${t.spread(t.number(low, 1), t.number(high, 1))} min per foil`,

    working: "Working",
    alone: "One colourist",
    two: "Colourist and assistant",
    who: "Colourist",
    assistant: "Assistant",
    assistantSide: "The assistant’s side",
    sides: { left: "Client’s left", right: "Client’s right" },

    off: (piece: Piece) => `${t.capital(pieces(t).word(2, piece))} come off`,
    each: "Each when it is ready",
    together: "All in one rinse",

    lift: "Lift",
    asAsked: "As asked with the client",
    notSet: "Not set",
    levels: "From level to level",
    fromTo: ({ from, to }: { from: number; to: number }) => `From level ${t.number(from)} to ${t.number(to)}`,
    levelNow: "Level now",
    target: "Target level",

    appointment: "Appointment length",
    inMinutes: "Minutes in the chair",
    booked: "Minutes booked",
    drying: "Drying",
    dried: "In the chair",
    damp: "Left out",

    heat: "Heat, if the maker’s directions allow it",
    noHeat: "None",
    minutes: (minutes: number) => t.minutes(minutes),
    temperature: "Temperature, if measured",

    breaks: "Breaks",
    fromMin: "From minute",
    toMin: "To minute",
    whoRests: "Who rests",
    rests: { both: "Both on break", "1": "Colourist on break", "2": "Assistant on break" },
    addBreak: "Add a break",
    removeBreak: "Remove",
  }
}
