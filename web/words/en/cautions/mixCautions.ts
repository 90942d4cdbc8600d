import type { MixCode, SheetGap } from "../../../core/cautions/rules/cautionCode"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What was found of a mix. */
export function mixCautions(t: Tools, named: (mix: string) => string) {
  const gaps: Record<SheetGap, string> = {
    "longest-time": "the maximum time",
    "on-scalp": "whether it may touch the scalp",
    "alert-test": "whether it needs a patch test",
    "pot-life": "the pot life",
  }
  const cushion = t.spelled("a backcombed cushion")
  return {
    "over-legal-limit": ({ mix, onHeadPercent, mostPercent }) =>
      `${named(mix)} would be ${t.number(onHeadPercent, 1)} % peroxide on the head; the law allows ${mostPercent} % in the EU and the UK. Use a weaker developer.`,
    "hairline-strength": ({ mix, volume, mostVolume }) =>
      `${named(mix)} is ${t.number(volume)} vol at the hairline; ${mostVolume} vol is the most used there (common practice). Use ${mostVolume} vol or a separate mix.`,
    "strong-developer": ({ mix, volume, usualMostVolume }) =>
      `${named(mix)} is ${t.number(volume)} vol, above the usual maximum of ${usualMostVolume}. Two gentler visits are easier on the hair.`,
    "developer-not-on-sheet": ({ mix, product, volume, listed }) =>
      `${named(mix)}: ${product} is not meant for ${t.number(volume)} vol; its directions list ${t.or(listed.map((each) => t.number(each)))} vol.`,
    "ratio-not-on-sheet": ({ mix, product, parts, low, high }) =>
      low === high
        ? `${named(mix)} is 1 : ${t.number(parts)}; the directions of ${product} say 1 : ${t.number(low)}.`
        : `${named(mix)} is 1 : ${t.number(parts)}; the directions of ${product} say 1 : ${t.number(low)} to 1 : ${t.number(high)}.`,
    "off-scalp-product": ({ mix, product }) =>
      `${named(mix)}: ${product} is off-scalp only. Start further from the scalp or choose another product.`,
    heat: ({ mix, heatMin, allowedMin }) => {
      const planned = `${t.number(heatMin)} min of heat planned`
      if (allowedMin === null)
        return `${named(mix)}: ${planned}; the directions do not mention heat. Switch the heat off.`
      if (allowedMin === 0) return `${named(mix)}: ${planned}; the directions forbid it. Switch the heat off.`
      return `${named(mix)}: ${planned}; the directions allow ${t.number(allowedMin)}. Shorten the heat or switch it off.`
    },
    "heat-place": ({ mix, forbiddenVolume }) =>
      `${named(mix)}: no heat with ${forbiddenVolume} vol or more, near the hairline, or near ${cushion}.`,
    "heat-time": ({ mix, heatMin, usualMostMin }) =>
      `${named(mix)}: ${t.number(heatMin)} min of heat planned; ${t.number(usualMostMin)} min is the usual most, whatever the directions allow.`,
    "open-air-dries": ({ mix }) =>
      `${named(mix)} lies in the open air, where it dries and stops working. Keep it moist: film or re-mist as the maker directs (common practice).`,
    "stronger-roots": ({ mix, volume, endsMix, endsVolume }) =>
      `${named(mix)}, ${t.number(volume)} vol, would be on the roots over the weaker mix ${endsMix}, ${t.number(endsVolume)} vol, on the ends. The scalp’s warmth lifts roots faster: usual is the same strength there, or less (common practice).`,
    "no-sheet": ({ mix, product }) =>
      `${named(mix)}: no product sheet for ${product}. Enter what the tub says. If it contains dye, it needs a patch test.`,
    "sheet-silent": ({ mix, product, gaps: missing }) =>
      `${named(mix)}: the sheet of ${product} does not say ${t.or(missing.map((gap) => gaps[gap]))}. Look on the tub.`,
  } satisfies Sentences<MixCode>
}
