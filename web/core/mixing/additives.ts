import type { Amounts } from "./mixAmounts"

/** What is added to a bowl beside lightener and developer, with what it does to the ratio: parts of the rest to 1 of lightener. */
export type AdditiveCode =
  | { code: "instead-of-developer"; name: string; grams: number }
  | { code: "beside-developer"; name: string; grams: number; restParts: number }

export const additivesOf = ({ additives, lightenerG, developerG }: Amounts): AdditiveCode[] =>
  additives.map(({ name, grams, replacesDeveloper }) =>
    replacesDeveloper
      ? { code: "instead-of-developer", name, grams }
      : { code: "beside-developer", name, grams, restParts: (developerG + grams) / lightenerG },
  )
