import { developerHabits, legalLimitPercent } from "../../../../presets/formula/developers"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { heatHabits } from "../../../../presets/timing/pace"
import { isOverLegalLimit, labelPercent, onHeadPercent } from "../../mixing/strength"
import type { SheetGap } from "./cautionCode"
import { caution, eachMix, type PlannedMix, type Rule, stop, type Visit } from "./rule"

const { ceilingVolume, hairlineCeilingVolume } = developerHabits

/** What is to be mixed, held against its sheet and the law. */
export const mixRules = {
  "over-legal-limit": stop({
    decides: "law",
    isPublic: true,
    field: "formula",
    source: "legal-strength",
    finds: (visit) =>
      eachMix(visit, ({ id, developerVolume, ratio }) => {
        const percent = onHeadPercent(labelPercent(developerVolume), ratio)
        return isOverLegalLimit(percent)
          ? { code: "over-legal-limit", mix: id, onHeadPercent: percent, mostPercent: legalLimitPercent }
          : null
      }),
  }),
  "hairline-strength": stop({
    decides: "colourist",
    isPublic: true,
    field: "formula",
    source: "common-practice",
    finds: (visit) =>
      eachMix(
        visit,
        ({ id, developerVolume: volume, near }) =>
          near.hairline && volume > hairlineCeilingVolume
            ? { code: "hairline-strength", mix: id, volume, mostVolume: hairlineCeilingVolume }
            : null,
        productAndStrength,
      ),
  }),
  "strong-developer": stop({
    decides: "colourist",
    isPublic: true,
    field: "formula",
    source: "common-practice",
    finds: (visit) =>
      eachMix(
        visit,
        ({ id, developerVolume: volume, near }) =>
          !near.hairline && volume > ceilingVolume
            ? { code: "strong-developer", mix: id, volume, usualMostVolume: ceilingVolume }
            : null,
        productAndStrength,
      ),
  }),
  "developer-not-on-sheet": stop({
    decides: "maker",
    isPublic: true,
    field: "formula",
    source: "product-sheet",
    finds: (visit) => eachMix(visit, developerOffSheet, productAndStrength),
  }),
  "ratio-not-on-sheet": stop({
    decides: "maker",
    isPublic: true,
    field: "formula",
    source: "product-sheet",
    finds: (visit) =>
      eachMix(visit, ratioOffSheet, ({ product, ratio }) => `${product}, 1 : ${inRatio(ratio)}`),
  }),
  "off-scalp-product": stop({
    decides: "maker",
    isPublic: true,
    field: "formula",
    source: "product-sheet",
    finds: (visit) =>
      eachMix(visit, ({ id, sheet, near }) =>
        sheet?.onScalp === false && near.scalp
          ? { code: "off-scalp-product", mix: id, product: sheet.name }
          : null,
      ),
  }),
  heat: stop({
    decides: "maker",
    isPublic: true,
    field: "timing",
    source: "heat-burns",
    finds: (visit) =>
      eachMix(
        visit,
        ({ id, sheet, heatMin }) =>
          heatMin > (sheet?.heatMin ?? 0)
            ? { code: "heat", mix: id, heatMin, allowedMin: sheet?.heatMin ?? null }
            : null,
        productAndHeat,
      ),
  }),
  "heat-place": stop({
    decides: "colourist",
    isPublic: true,
    field: "timing",
    source: "common-practice",
    finds: (visit) => heatHabitsBroken["heat-place"](visit),
  }),
  "heat-time": stop({
    decides: "colourist",
    isPublic: true,
    field: "timing",
    source: "common-practice",
    finds: (visit) => heatHabitsBroken["heat-time"](visit),
  }),
  "open-air-dries": caution({
    decides: "maker",
    isPublic: true,
    field: "formula",
    source: "common-practice",
    finds: (visit) =>
      eachMix(visit, ({ id, isOpen }) => (isOpen ? { code: "open-air-dries", mix: id } : null)),
  }),
  "stronger-roots": caution({
    decides: "colourist",
    isPublic: true,
    field: "formula",
    source: "common-practice",
    finds: (visit) =>
      eachMix(visit, ({ id, developerVolume: volume, over }) =>
        over ? { code: "stronger-roots", mix: id, volume, endsMix: over.mix, endsVolume: over.volume } : null,
      ),
  }),
  "no-sheet": caution({
    decides: "colourist",
    isPublic: true,
    field: "formula",
    source: "product-sheet",
    finds: (visit) =>
      eachMix(visit, ({ id, product, sheet }) =>
        sheet === null ? { code: "no-sheet", mix: id, product } : null,
      ),
  }),
  "sheet-silent": caution({
    decides: "maker",
    isPublic: true,
    field: "formula",
    source: "product-sheet",
    finds: (visit) =>
      eachMix(visit, ({ id, sheet }) => {
        const gaps = sheet ? silentOn(sheet) : []
        return sheet && gaps.length > 0 ? { code: "sheet-silent", mix: id, product: sheet.name, gaps } : null
      }),
  }),
} satisfies Record<string, Rule>

/** What is unusual about the heat over each mix, of which the clock asks too: neither client nor day is looked at. */
export const heatHabitsBroken = {
  "heat-place": (visit: Pick<Visit, "mixes">) =>
    eachMix(
      visit,
      (mix) =>
        mix.heatMin > 0 && isNoPlaceForHeat(mix)
          ? { code: "heat-place", mix: mix.id, forbiddenVolume: heatHabits.forbiddenVolume }
          : null,
      (mix) => `${productAndStrength(mix)}, ${inShort(mix.heatMin)} min`,
    ),
  "heat-time": (visit: Pick<Visit, "mixes">) =>
    eachMix(
      visit,
      ({ id, sheet, heatMin }) =>
        heatMin > heatHabits.mostMin && heatMin <= (sheet?.heatMin ?? 0)
          ? { code: "heat-time", mix: id, heatMin, usualMostMin: heatHabits.mostMin }
          : null,
      productAndHeat,
    ),
}

function developerOffSheet({ id, sheet, developerVolume: volume }: PlannedMix) {
  if (!sheet || sheet.kind === "direct-toner") return null
  const listed = sheet.developers.map((each) => each.volume)
  if (listed.includes(volume) || isBlendWithin(listed, volume)) return null
  return { code: "developer-not-on-sheet", mix: id, product: sheet.name, volume, listed } as const
}

function ratioOffSheet({ id, sheet, ratio }: PlannedMix) {
  if (!sheet || sheet.kind === "direct-toner") return null
  const parts = ratio.developer / ratio.lightener
  const { low, high } = sheet.ratio
  if (parts >= low - 1e-9 && parts <= high + 1e-9) return null
  return { code: "ratio-not-on-sheet", mix: id, product: sheet.name, parts, low, high } as const
}

/** Figures as a pass keeps them, the same in every language. */
const inShort = (value: number) => String(Number(value.toFixed(2)))
const inRatio = ({ lightener, developer }: PlannedMix["ratio"]) => inShort(developer / lightener)
const productAndHeat = ({ product, heatMin }: PlannedMix) => `${product}, ${inShort(heatMin)} min`
const productAndStrength = ({ product, developerVolume }: PlannedMix) =>
  `${product}, ${inShort(developerVolume)} vol`

/** Blended from two listed bottles: weaker than one, stronger than the other. */
const isBlendWithin = (volumes: readonly number[], volume: number) =>
  volume >= Math.min(...volumes) && volume <= Math.max(...volumes)

const isNoPlaceForHeat = ({ developerVolume, near }: PlannedMix) =>
  developerVolume >= heatHabits.forbiddenVolume || near.hairline || near.cushion

const silentOn = (sheet: ProductSheet): SheetGap[] => [
  ...(sheet.longestMin === null ? (["longest-time"] as const) : []),
  ...(sheet.onScalp === null ? (["on-scalp"] as const) : []),
  ...(sheet.alertTest === null ? (["alert-test"] as const) : []),
  ...(sheet.potLifeMin === null ? (["pot-life"] as const) : []),
]
