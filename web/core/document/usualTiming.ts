import type { TimingChoices } from "./timingChoices"

/** One usual pair of hands; each foil off when it is ready; nothing booked, no goal said. */
export const usualTiming: TimingChoices = {
  skill: "usual",
  pace: null,
  hands: 1,
  breaks: [],
  rinse: "each",
  heatMin: null,
  bookingMin: null,
  lift: null,
  strandTest: null,
}
