import type { StandingAllergy } from "../document/consultation"
import { counts, letters } from "../fields/limits"
import { plainLetters } from "../text/plainLetters"
import type { ClientCard, Consent } from "./card"

/**
 * Two cards of one person as one: `kept` gives its name and what both have, and nothing that stands on the other is lost.
 * Null where it would not fit on a card.
 */
export function mergeCards(kept: ClientCard, other: ClientCard): ClientCard | null {
  const note = joined(kept.note, otherNote(kept, other))
  const allergies = allAllergies(kept.allergies, other.allergies)
  if (note.length > letters.note || allergies.length > counts.allergies.high) return null
  return {
    ...kept,
    colour: kept.colour === "none" ? other.colour : kept.colour,
    phone: kept.phone || other.phone,
    sheetLanguage: kept.sheetLanguage || other.sheetLanguage,
    note,
    allergies,
    consent: laterOf(kept.consent, other.consent),
  }
}

/** What has one place on a card and stands there already goes to the note. */
function otherNote(kept: ClientCard, other: ClientCard): string {
  const name = plainLetters(other.name) === plainLetters(kept.name) ? "" : other.name
  const phone = kept.phone === "" || other.phone === kept.phone ? "" : other.phone
  const said = [name, phone].filter(Boolean).join(", ")
  return joined(said, other.note === kept.note ? "" : other.note)
}

const joined = (...parts: readonly string[]) => parts.filter((part) => part.trim() !== "").join("\n")

/** An allergy named on both stands once; of two kinds both stay, since the stricter one must. */
function allAllergies(one: readonly StandingAllergy[], two: readonly StandingAllergy[]): StandingAllergy[] {
  const keyOf = ({ kind, to }: StandingAllergy) => `${kind} ${plainLetters(to)}`
  const known = new Set(one.map(keyOf))
  return [...one, ...two.filter((allergy) => !known.has(keyOf(allergy)))]
}

/** What was said last counts; on one day a no does. */
function laterOf(one: Consent | null, two: Consent | null): Consent | null {
  if (!one || !two) return one ?? two
  if (one.on !== two.on) return one.on > two.on ? one : two
  return one.said === "no" ? one : two
}
