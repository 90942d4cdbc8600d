import { hairStates, hasHistory } from "../../document/consultation"
import { caution, finalStop, type Rule, stop, when } from "./rule"

/** What the hair has been through. */
export const hairRules = {
  "metallic-salts": finalStop({
    decides: "colourist",
    isPublic: false,
    at: "hair",
    source: "common-practice",
    finds: ({ consultation }) => when(hasHistory(consultation, "metallic-salts"), { code: "metallic-salts" }),
  }),
  henna: stop({
    decides: "colourist",
    isPublic: false,
    at: "hair",
    source: "common-practice",
    finds: ({ consultation }) => when(hasHistory(consultation, "henna"), { code: "henna" }),
  }),
  "strand-test-failed": finalStop({
    decides: "colourist",
    isPublic: false,
    at: "tests",
    source: "common-practice",
    finds: ({ consultation: { strandTests } }) =>
      when(
        strandTests.some(({ outcome }) => outcome === "failed"),
        { code: "strand-test-failed" },
      ),
  }),
  "over-stretched": finalStop({
    decides: "colourist",
    isPublic: false,
    at: "hair",
    source: "common-practice",
    finds: ({ consultation }) =>
      when(
        hairStates(consultation).some(({ stretch }) => stretch === "stays-stretched" || stretch === "breaks"),
        { code: "over-stretched" },
      ),
  }),
  "recent-relaxer": stop({
    decides: "colourist",
    isPublic: false,
    at: "ask",
    source: "common-practice",
    finds: ({ consultation: { answers } }) =>
      when(answers.recentRelaxer === "yes", { code: "recent-relaxer" }),
  }),
  "strand-test-first": caution({
    decides: "colourist",
    isPublic: false,
    at: "tests",
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
    isPublic: false,
    at: "hair",
    source: "dye-diffusion",
    finds: ({ consultation }) => when(hasHistory(consultation, "lightened"), { code: "overlap" }),
  }),
  porous: caution({
    decides: "colourist",
    isPublic: false,
    at: "hair",
    source: "common-practice",
    finds: ({ consultation }) =>
      when(
        hairStates(consultation).some(({ porosity }) => porosity === "high"),
        { code: "porous" },
      ),
  }),
} satisfies Record<string, Rule>
