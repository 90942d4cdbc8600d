/** What to do when something goes wrong at the chair. First aid and emergency services come before any line here. */
export type Emergency = { what: string; steps: readonly string[]; source: string }

export const emergencies: readonly Emergency[] = [
  {
    what: "Hot, swelling or smoking foil",
    steps: [
      "Gloves on. Open the foil away from the face and take it off the hair.",
      "Rinse that strand and the scalp under it with cool water, at once and well.",
      "Put the foil and its product in plenty of water, away from people.",
      "Feel every other foil of that bowl. Take off any that is warm.",
      "No heat and no more of that mix today. Write down which bowl it was.",
    ],
    source:
      "rinse well, no heat: Bouschon et al., Ann Dermatol Venereol 2018;145:359; the rest common practice, no source",
  },
  {
    what: "Burning scalp",
    steps: [
      "Take off every foil near it. Do not wait for the look.",
      "Rinse with plenty of cool water for 15 minutes.",
      "No heat, no toner and nothing else on this scalp today.",
      "Blisters, broken skin or pain that stays: to a doctor today, with the product’s name and the time.",
    ],
    source:
      "stop at pain, rinse well: Bouschon et al. 2018; delayed deep burns: Cutan Ocul Toxicol 2016;35:332; 15 minutes: general first aid",
  },
  {
    what: "Splash in the eye",
    steps: [
      "Rinse the open eye at once under running lukewarm water, from the nose outward.",
      "Contact lens out, if it comes out easily.",
      "Go on rinsing for 15 minutes.",
      "Then to emergency eye care, with the product’s name. Do not drive alone.",
    ],
    source:
      "rinse eyes at once: label words of Regulation (EC) 1223/2009, Annex III; the rest general first aid",
  },
  {
    what: "Wheeze, hives or a swelling face",
    steps: [
      "Out to fresh air, away from powder and bowl. Sit upright.",
      "Trouble breathing, or face, lips or tongue swelling: call the emergency number now.",
      "Help with the client’s own inhaler or adrenaline pen.",
      "When breathing allows it, someone rinses the product off.",
      "Stay with them. No lightener again before a doctor has said so.",
    ],
    source:
      "persulfates: immediate reactions, CIR 2001; breathing trouble is an emergency: general first aid",
  },
  {
    what: "Faint",
    steps: [
      "Lay the client flat, legs up. Keep product away from eyes and mouth.",
      "Loosen the gown. Fresh air.",
      "Not awake within a minute, or not breathing as usual: call the emergency number.",
      "Awake: stay lying a while. Rinse the foils off and end the service.",
    ],
    source: "general first aid",
  },
]

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
