import type { HomeCare, SkinSign } from "../../../../presets/sheets/aftercare"
import type { Tools } from "../../tools"

/** The sheet to take home, and the salon's record card. */
export const cards = (t: Tools) => ({
  takeHome: {
    about: "To take home",
    done: "What was done",
    planned: "What is planned",
    picture: "The picture shows where, not the colour.",
    mirror: "As you see yourself in the mirror",
    skin: "Watch your skin and scalp today and for three days",
    signs: {
      irritation:
        "Itching, redness or a rash: rinse with plenty of lukewarm water for 20 minutes, put nothing else on it, and call us. Not better within a day: ask a pharmacist or doctor.",
      burn: "Blisters, weeping skin or lasting pain: see a doctor the same day. Burns can show later.",
      breathing: "Trouble breathing, or swelling of face, lips, tongue or throat:",
      "take-along": "Take this sheet with you: it names the products and the date.",
    } satisfies Record<SkinSign, string>,
    breathing: (number: string) =>
      `Trouble breathing, or swelling of face, lips, tongue or throat: use your own adrenaline pen if you have one, call ${number || "your emergency number (_________)"} at once, and lie down unless breathing is hard.`,
    care: "Home care",
    careWhen: {
      "first-days": "First two days",
      "every-wash": "Every wash",
      weekly: "Once a week",
      heat: "Heat",
      "sun-and-pool": "Sun and pool",
    } satisfies Record<HomeCare, string>,
    careText: {
      "first-days": "No washing, no tight bands or clips.",
      "every-wash":
        "Lukewarm water, mild shampoo, conditioner on the lightened lengths. Untangle from the ends up.",
      weekly:
        "If the lightened hair looks too warm: a toning conditioner, as its directions say. Then a mask.",
      heat: "Use heat protection as its label says. Hot tools on dry hair only, at the lowest setting that works.",
      "sun-and-pool":
        "Before you swim, wet the hair and put conditioner in; rinse well after. A hat in strong sun.",
    } satisfies Record<HomeCare, string>,
    back: "When to come back",
    toner: "Toner",
    frame: "Face frame",
    days: (from: string, to: string) => t.days(from, to),
    regrowth: (from: string, to: string) => `${t.days(from, to)} (on regrowth only)`,
    test: "Patch test",
    testBy: (hours: number, day: string) =>
      `Before every toner or colour, as its maker directs, at least ${t.whole(hours)} hours ahead: for the earliest date, by ${t.date(day)}.`,
    questions: "Questions?",
    ask: (salon: string, phone: string) =>
      [salon || "Salon ______________", phone || "phone ______________"].join(", "),
    mind: "Mind",
    defers:
      "Follow the directions on every product; they, local law and licence rules come before this sheet. Keep it.",
  },

  record: {
    about: "Record card",
    private: "Confidential: contains health answers. Keep it where only authorised staff can read it.",
    hair: "Hair and wishes",
    planned: "What is planned",
    mixed: "Mixed",
    weighed: "Left in the bowl",
    weigh: (bowls: readonly { name: string; leftG: number | null }[]) =>
      bowls.map(({ name, leftG }) => `${name} ${leftG === null ? "________" : t.number(leftG)} g`).join(", "),
    toner: "toner",
    mix: (letter: string) => `mix ${letter}`,
    times: "Planned and actual, minutes from the first parting",
    heads: {
      number: "No.",
      foil: "Foil",
      mix: "Mix",
      on: "On",
      off: "Off",
      planned: "plan",
      actual: "actual",
      checks: "Minutes on, and checks",
    },
    alarms: "What went wrong",
    takenBack: (what: string) => `${what} (undone)`,
    next: "Next time",
    defers:
      "A formula is not a repeat order: a new consultation, tests and the maker’s directions come first at each visit, then local law and licence rules.",
  },
})
