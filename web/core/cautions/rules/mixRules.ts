import { commonPractice } from "../../../../presets/figure/figure"
import { developerHabits, legalLimitPercent } from "../../../../presets/formula/developers"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { heatHabits } from "../../../../presets/timing/pace"
import { isOverLegalLimit, labelPercent, onHeadPercent } from "../../mixing/strength"
import { numberText } from "../../text/numberText"
import { caution, eachMix, finalStop, type PlannedMix, type Rule, stop } from "./rule"

const { ceilingVolume, hairlineCeilingVolume } = developerHabits
const theSheet = "the maker’s directions, as typed in"

/** What is to be mixed, held against its sheet and the law. */
export const mixRules: readonly Rule[] = [
  finalStop({
    rule: "over-legal-limit",
    decides: "the law and the label",
    source: "Regulation (EC) 1223/2009, Annex III, entry 12(a), as replaced by Regulation (EU) 2019/831",
    finds: (visit) =>
      eachMix(visit, ({ name, developerVolume, ratio }) => {
        const percent = onHeadPercent(labelPercent(developerVolume), ratio)
        return isOverLegalLimit(percent)
          ? `${name} would be ${numberText(percent, 1)} % on the head; the law allows ${legalLimitPercent} %. Take a weaker developer.`
          : null
      }),
  }),
  finalStop({
    rule: "hairline-strength",
    decides: "the colourist",
    source: commonPractice,
    finds: (visit) =>
      eachMix(visit, ({ name, developerVolume, near }) =>
        near.hairline && developerVolume > hairlineCeilingVolume
          ? `${name} is ${numberText(developerVolume)} vol at the hairline, where ${hairlineCeilingVolume} vol is the most. Take ${hairlineCeilingVolume} vol, or give the hairline a mix of its own.`
          : null,
      ),
  }),
  stop({
    rule: "strong-developer",
    decides: "the colourist",
    source: commonPractice,
    finds: (visit) =>
      eachMix(
        visit,
        ({ name, developerVolume, near }) =>
          !near.hairline && developerVolume > ceilingVolume
            ? `${name} is ${numberText(developerVolume)} vol, above the usual ceiling of ${ceilingVolume}. Stages on two days ask less of the hair.`
            : null,
        productAndStrength,
      ),
  }),
  stop({
    rule: "developer-not-on-sheet",
    decides: "the maker’s directions",
    source: theSheet,
    finds: (visit) =>
      eachMix(
        visit,
        ({ name, sheet, developerVolume }) => {
          if (!sheet || sheet.kind === "direct-toner") return null
          const allowed = sheet.developers.map(({ volume }) => volume)
          return allowed.includes(developerVolume) || isBlendWithin(allowed, developerVolume)
            ? null
            : `${name}: ${sheet.name} is not meant for ${numberText(developerVolume)} vol; its sheet lists ${allowed.join(", ")} vol.`
        },
        productAndStrength,
      ),
  }),
  stop({
    rule: "ratio-not-on-sheet",
    decides: "the maker’s directions",
    source: theSheet,
    finds: (visit) =>
      eachMix(
        visit,
        ({ name, sheet, ratio }) => {
          const parts = ratio.developer / ratio.lightener
          return !sheet ||
            sheet.kind === "direct-toner" ||
            (parts >= sheet.ratio.low - 1e-9 && parts <= sheet.ratio.high + 1e-9)
            ? null
            : `${name} is 1 : ${numberText(parts)}; the sheet of ${sheet.name} says 1 : ${numberText(sheet.ratio.low)} to 1 : ${numberText(sheet.ratio.high)}.`
        },
        ({ product, ratio }) => `${product}, 1 : ${numberText(ratio.developer / ratio.lightener)}`,
      ),
  }),
  stop({
    rule: "off-scalp-product",
    decides: "the maker’s directions",
    source: theSheet,
    finds: (visit) =>
      eachMix(visit, ({ name, sheet, near }) =>
        sheet?.onScalp === false && near.scalp
          ? `${name}: ${sheet.name} is not meant for the scalp; start it further off, or take another product.`
          : null,
      ),
  }),
  stop({
    rule: "heat",
    decides: "the maker’s directions",
    source:
      "Ann Dermatol Venereol 2018;145:359-64; J Clin Med 2024;13:3542: scalp burns with lightener and heat",
    finds: (visit) =>
      eachMix(
        visit,
        ({ name, sheet, heatMin }) =>
          heatMin > (sheet?.heatMin ?? 0)
            ? `${name}: ${numberText(heatMin)} minutes of heat, and the sheet ${heatWords(sheet)}. Leave the heat off.`
            : null,
        ({ product, heatMin }) => `${product}, ${numberText(heatMin)} minutes`,
      ),
  }),
  caution({
    rule: "heat-place",
    decides: "the colourist",
    source: commonPractice,
    finds: (visit) =>
      eachMix(visit, (mix) =>
        mix.heatMin > 0 && isNoPlaceForHeat(mix)
          ? `${mix.name}: no heat with ${heatHabits.forbiddenVolume} vol and up, at the hairline, or where a cushion lies near the root.`
          : null,
      ),
  }),
  caution({
    rule: "no-sheet",
    decides: "the colourist",
    source: theSheet,
    finds: (visit) =>
      eachMix(visit, ({ name, product, sheet }) =>
        sheet === null
          ? `${name}: there is no sheet for ${product}; type in what is printed on the tub. If it holds dye, it asks for an alert test.`
          : null,
      ),
  }),
  caution({
    rule: "sheet-silent",
    decides: "the maker’s directions",
    source: theSheet,
    finds: (visit) =>
      eachMix(visit, ({ name, sheet }) => {
        const gaps = sheet ? silentOn(sheet) : []
        return gaps.length > 0
          ? `${name}: the sheet of ${sheet?.name} does not state ${gaps.join(", ")}; look on the tub.`
          : null
      }),
  }),
]

const productAndStrength = ({ product, developerVolume }: PlannedMix) =>
  `${product}, ${numberText(developerVolume)} vol`

/** Blended from two listed bottles: weaker than one, stronger than the other. */
const isBlendWithin = (volumes: readonly number[], volume: number) =>
  volume >= Math.min(...volumes) && volume <= Math.max(...volumes)

const isNoPlaceForHeat = ({ developerVolume, near }: PlannedMix) =>
  developerVolume >= heatHabits.forbiddenVolume || near.hairline || near.cushion

function heatWords(sheet: ProductSheet | null): string {
  if (!sheet || sheet.heatMin === null) return "says nothing of heat"
  return sheet.heatMin === 0 ? "forbids it" : `allows ${numberText(sheet.heatMin)}`
}

const silentOn = (sheet: ProductSheet): string[] => [
  ...(sheet.longestMin === null ? ["the longest time"] : []),
  ...(sheet.onScalp === null ? ["whether it may touch the scalp"] : []),
  ...(sheet.alertTest === null ? ["whether it asks for an alert test"] : []),
  ...(sheet.potLifeMin === null ? ["how long a mix lasts"] : []),
]
