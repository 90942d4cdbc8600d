/**
 * What goes wrong at the chair, the gravest first, and the steps of each in their order; the words of both are of the
 * language. First aid training, the emergency number and the maker's directions come before every list.
 *
 * Sources. Breathing: Anaphylaxis UK, "What to do in an emergency" (2026). Burning: NHS advice on chemical burns (cool
 * running water, 20 minutes or more); delayed deep burns: Cutan Ocul Toxicol 2016;35:332. Eye: public first-aid pages
 * say 10 to 20 minutes, the longest is taken; rinse eyes at once: Regulation (EC) 1223/2009, Annex III. Hot foil, wheeze,
 * faint, fit and swallowed: general first aid and common practice, no source.
 */
export const emergencies = [
  {
    name: "breathing",
    steps: ["pen", "call", "lie-flat", "second-pen", "air", "rinse-later", "stay"],
  },
  { name: "burning", steps: ["foils-off", "rinse", "no-ice", "no-more", "doctor"] },
  { name: "eye", steps: ["rinse", "lens", "keep-rinsing", "go"] },
  { name: "wheeze", steps: ["powder-away", "inhaler", "call", "rinse-later"] },
  { name: "hot-foil", steps: ["take-off", "into-water", "rinse", "feel-others", "flames", "no-more"] },
  { name: "faint", steps: ["lie-flat", "keep-clear", "not-awake", "not-breathing", "end"] },
  { name: "fit", steps: ["make-room", "nothing-in", "time-it", "call", "after"] },
  { name: "swallowed", steps: ["rinse-mouth", "not-sick", "call"] },
] as const

export type Emergency = (typeof emergencies)[number]
export type EmergencyName = Emergency["name"]
export type EmergencyStep<N extends EmergencyName> = Extract<Emergency, { name: N }>["steps"][number]
export const emergencyNames = emergencies.map(({ name }) => name)

/** Times at the chair. Assumptions, save the interval of looks in pace.ts. */
export const chairHabits = {
  /** Calls come so long ahead. */
  callLookAheadMin: 1,
  callLimitAheadMin: 5,
  /** A foil past its limit is called out again after so many seconds, until it is off. */
  callAgainSeconds: 15,
  /** A service left running for so long was forgotten, and is called out no more on other plans' screens. */
  forgottenAfterHours: 12,
}
