/** What an invented client was asked and wants, for the example: figures and names are made up. */
export const exampleConsultation = {
  askedBy: "M.",
  ageYears: 34,
  level: { now: 7, ends: 7, target: 8 },
  greyShare: 0.1,
  rootDistanceMm: 6,
  upkeepWeeks: 10,
  toner: { product: "House toner (invented)", developerVolume: 10, parts: 2 },
  strandTested: "House powder (invented)",
  /** Home colour in the ends: a stop that the colourist decides, and was overridden. */
  override: { rule: "unknown-content", reason: "Cut hair tested in the mix: no heat, no bubbles.", by: "M." },
}
