import type { TimingChoices } from "./schema"

/** One usual pair of hands; each foil off when it is ready; nothing booked, no goal said. */
export const usualTiming: TimingChoices = {
  skill: "usual",
  hands: 1,
  rinse: "each",
  bookingMin: null,
  lift: null,
}
