const rules = new Intl.PluralRules("en-GB", { type: "ordinal" })
const endings: Partial<Record<Intl.LDMLPluralRule, string>> = { one: "st", two: "nd", few: "rd" }

/** 1st, 2nd, 3rd, 4th: a place in the order of application, never a number on the map. */
export const ordinal = (place: number) => `${place}${endings[rules.select(place)] ?? "th"}`
