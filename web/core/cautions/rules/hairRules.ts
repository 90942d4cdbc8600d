import { commonPractice } from "../../../../presets/figure/figure"
import { hairStates, hasHistory } from "../../document/consultation"
import { numberText } from "../../text/numberText"
import { morePermeable } from "./permeability"
import { caution, finalStop, type Rule, stop, when } from "./rule"

/** What the hair has been through. */
export const hairRules: readonly Rule[] = [
  finalStop({
    rule: "metallic-salts",
    decides: "the colourist",
    source: commonPractice,
    finds: ({ consultation }) =>
      when(
        hasHistory(consultation, "metallic-salts"),
        "Metallic salts or compound henna are in the hair: with peroxide it can heat and break. Cut it out or wait.",
      ),
  }),
  stop({
    rule: "henna",
    decides: "the colourist",
    source: commonPractice,
    finds: ({ consultation }) =>
      when(
        hasHistory(consultation, "henna"),
        "There is henna in the hair and nobody knows whether metal is in it. Try cut hair in the mix before anything.",
      ),
  }),
  finalStop({
    rule: "strand-test-failed",
    decides: "the colourist",
    source: commonPractice,
    finds: ({ consultation: { strandTests } }) =>
      when(
        strandTests.some(({ outcome }) => outcome === "failed"),
        "A strand test failed: the hair broke or did not hold. Do not lighten it.",
      ),
  }),
  finalStop({
    rule: "over-stretched",
    decides: "the colourist",
    source: commonPractice,
    finds: ({ consultation }) =>
      when(
        hairStates(consultation).some(({ stretch }) => stretch === "stays-stretched" || stretch === "breaks"),
        "Wet hair stays stretched or breaks. Do not lighten it; cut, care and look again another day.",
      ),
  }),
  stop({
    rule: "recent-relaxer",
    decides: "the colourist",
    source: commonPractice,
    finds: ({ consultation: { answers } }) =>
      when(
        answers.recentRelaxer === "yes",
        "A relaxer or perm was done lately. Decline, or wait and let a strand test decide.",
      ),
  }),
  caution({
    rule: "strand-test-first",
    decides: "the colourist",
    source: commonPractice,
    finds: ({ consultation }) =>
      when(
        hasHistory(consultation, "coloured", "lightened", "permed", "relaxed") &&
          consultation.strandTests.length === 0,
        "The hair has been treated and no strand test is written down. Test a strand first.",
      ),
  }),
  caution({
    rule: "overlap",
    decides: "the maker’s directions",
    source: `J Soc Cosmet Chem 1993;44:358, Table III: after half an hour of lightener dye moves in ${numberText(morePermeable.creamHalfHour, 1)} times as fast`,
    finds: ({ consultation }) =>
      when(
        hasHistory(consultation, "lightened"),
        "Some hair is lightened already. Keep off it unless the directions allow, protect the ends, look at 5 minutes.",
      ),
  }),
  caution({
    rule: "porous",
    decides: "the colourist",
    source: commonPractice,
    finds: ({ consultation }) =>
      when(
        hairStates(consultation).some(({ porosity }) => porosity === "high"),
        "Porous hair lifts and tones fast. First look at 5 minutes; tone it last.",
      ),
  }),
]
