import { hairStates, hasHistory } from "../../document/consultation"
import type { Piece } from "../../kinds/kindRecord"
import { caution, type Found, type PlannedTwice, type Rule, said, stop, when } from "./rule"

/** What the hair has been through. */
export const hairRules = {
  "metallic-salts": stop({
    decides: "maker",
    isPublic: true,
    field: "history",
    source: "common-practice",
    finds: ({ consultation }) => when(hasHistory(consultation, "metallic-salts"), { code: "metallic-salts" }),
  }),
  henna: stop({
    decides: "colourist",
    isPublic: true,
    field: "history",
    source: "common-practice",
    finds: ({ consultation }) => when(hasHistory(consultation, "henna"), { code: "henna" }),
  }),
  "strand-test-failed": stop({
    decides: "maker",
    isPublic: true,
    field: "strand-tests",
    source: "common-practice",
    finds: ({ consultation: { strandTests } }) =>
      strandTests
        .filter(({ outcome }) => outcome === "failed")
        .map(({ product }) => ({ why: { code: "strand-test-failed", product }, about: product })),
  }),
  "over-stretched": stop({
    decides: "maker",
    isPublic: true,
    field: "stretch",
    source: "common-practice",
    finds: ({ consultation }) =>
      when(
        hairStates(consultation).some(({ stretch }) => stretch === "stays-stretched" || stretch === "breaks"),
        { code: "over-stretched" },
      ),
  }),
  "recent-relaxer": stop({
    decides: "colourist",
    isPublic: true,
    field: "question-recentRelaxer",
    source: "common-practice",
    finds: (visit) => when(said(visit, "recentRelaxer"), { code: "recent-relaxer" }),
  }),
  "unknown-content": stop({
    decides: "colourist",
    isPublic: true,
    field: "question-homeColour",
    source: "common-practice",
    finds: (visit) => when(said(visit, "homeColour"), { code: "unknown-content" }),
  }),
  extensions: caution({
    decides: "colourist",
    isPublic: true,
    field: "question-extensions",
    source: "common-practice",
    finds: (visit) => when(said(visit, "extensions"), { code: "extensions" }),
  }),
  "strand-test-first": caution({
    decides: "colourist",
    isPublic: true,
    field: "strand-tests",
    source: "common-practice",
    finds: ({ consultation }) =>
      when(
        hasHistory(consultation, "coloured", "lightened", "permed", "relaxed") &&
          consultation.strandTests.length === 0,
        { code: "strand-test-first" },
      ),
  }),
  overlap: caution({
    decides: "maker",
    isPublic: true,
    field: "history",
    source: "dye-diffusion",
    finds: ({ consultation }) => when(hasHistory(consultation, "lightened"), { code: "overlap" }),
  }),
  "coated-twice": stop({
    decides: "colourist",
    isPublic: true,
    field: "regrowth",
    source: "dye-diffusion",
    finds: ({ twice }) => [...new Set(twice.map(({ mix }) => mix))].map((mix) => coatedTwice(mix, twice)),
  }),
  porous: caution({
    decides: "colourist",
    isPublic: true,
    field: "porosity",
    source: "common-practice",
    finds: ({ consultation }) =>
      when(
        hairStates(consultation).some(({ porosity }) => porosity === "high"),
        { code: "porous" },
      ),
  }),
} satisfies Record<string, Rule>

/** The foils of a mix that would coat lightened hair; an override is for these foils and this stretch, to the centimetre. */
function coatedTwice(mix: string, twice: readonly PlannedTwice[]): Found {
  const own = twice.filter((each) => each.mix === mix)
  const foils = [...new Set(own.map(({ foil }) => foil))].sort((a, b) => a - b)
  const fromMm = Math.min(...own.map((each) => each.fromMm))
  const toMm = Math.max(...own.map((each) => each.toMm))
  const about = `${foils.join(", ")}: ${Math.floor(fromMm / 10)}–${Math.ceil(toMm / 10)} cm`
  const [piece = "foil", ...others] = new Set(own.map((each) => each.piece ?? "foil"))
  const called: Piece = others.length > 0 ? "both" : piece
  const told = called === "foil" ? {} : { piece: called }
  return { why: { code: "coated-twice", foils, ...told, fromMm, toMm }, mixes: [mix], about }
}
