import type { Coded } from "../../web/words/say"

/** One sample a code: a union without a sample of each does not compile. */
export type SamplesOf<T extends Coded> = { readonly [C in T["code"]]: Extract<T, { code: C }> }

export const samplesOf = <T extends Coded>(samples: SamplesOf<T>): T[] => Object.values(samples)

/** Words that a person can be shown: not empty, and without what code leaves behind where data is missing. */
export const isSentence = (said: string): boolean =>
  said.trim() !== "" && !/undefined|NaN|\[object|null/.test(said)
