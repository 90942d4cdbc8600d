import type { Decider, Source } from "../../../core/cautions/rules/rule"

export const deciders = {
  law: "the law and the label",
  maker: "the maker’s directions",
  doctor: "the client’s doctor",
  colourist: "the colourist",
} satisfies Record<Decider, string>

/** Citations: the names of what is cited are not translated. */
export const sources = {
  "common-practice": "common practice, no source",
  "label-words": "label words of Regulation (EC) 1223/2009, Annex III, as listed by Tukes (Finland)",
  "label-words-and-trade-body":
    "label words of Regulation (EC) 1223/2009, Annex III, as listed by Tukes (Finland); National Hair and Beauty Federation (UK)",
  "legal-strength":
    "Regulation (EC) 1223/2009, Annex III, entry 12(a), as replaced by Regulation (EU) 2019/831",
  "alert-test-hours":
    "National Hair and Beauty Federation (UK): at least 48 hours; FDA, Hair dyes: 2 days, every time",
  "trade-body": "National Hair and Beauty Federation (UK)",
  eyes: "FDA, Hair dyes: keep off brows and lashes; label words on eyes",
  "persulfates-at-work":
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; HSE, COSHH and hairdressers",
  asthma:
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; ANSES (France), through the trade press: stop and refer",
  "dye-diffusion":
    "J Soc Cosmet Chem 1993;44:358, Table III: after half an hour of lightener, dye moves in about 13 times as fast",
  "heat-burns":
    "Ann Dermatol Venereol 2018;145:359-64; J Clin Med 2024;13:3542: scalp burns with lightener and heat",
  "product-sheet": "the maker’s directions, as entered on the product sheet",
} satisfies Record<Source, string>
