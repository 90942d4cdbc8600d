import { numberText } from "../text/numberText"
import type { Amounts } from "./mixAmounts"

/** What is stirred into a bowl beside lightener and developer, a sentence each, with what it does to the ratio. */
export const additiveWords = ({ additives, lightenerG, developerG }: Amounts): string[] =>
  additives.map(({ name, grams, replacesDeveloper }) => {
    const rest = numberText((developerG + grams) / lightenerG)
    return replacesDeveloper
      ? `${numberText(grams, 1)} g ${name}, in place of as much developer: the ratio stays.`
      : `${numberText(grams, 1)} g ${name}, on top of the developer: 1 g of lightener to ${rest} g of the rest.`
  })
