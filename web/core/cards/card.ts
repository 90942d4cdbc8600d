import type { StandingAllergy } from "../document/consultation"

/**
 * The card of one client: what stands from visit to visit. Plans belong to it from outside: a plan's file names no card.
 */
export type ClientCard = {
  id: string
  /** Initials or a name, as the salon writes it. */
  name: string
  colour: CardColour
  phone: string
  /** The language of sheets, a BCP 47 tag; empty where nobody said. */
  sheetLanguage: string
  allergies: readonly StandingAllergy[]
  note: string
  /** What the client said to this card being kept, and on which day; null where nobody asked. */
  consent: Consent | null
}

export type Consent = { said: "yes" | "no"; on: string }

export const cardColours = ["none", "blue", "orange", "green", "purple"] as const
export type CardColour = (typeof cardColours)[number]

export const newCard = (id: string, name: string): ClientCard => ({
  id,
  name,
  colour: "none",
  phone: "",
  sheetLanguage: "",
  allergies: [],
  note: "",
  consent: null,
})
