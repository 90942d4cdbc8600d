import { type Coded, type Sentences, say } from "../../web/words/say"

/** One sample for every code of a union: a code without its sample does not compile. */
export type Samples<T extends Coded> = { [C in T["code"]]: Extract<T, { code: C }> }

/** Every sample with the sentence that a language has for it. */
export const everySampleIn = <T extends Coded>(
  sentences: Sentences<T>,
  samples: Samples<T>,
): [code: string, sentence: string][] =>
  Object.values<T>(samples).map((sample) => [sample.code, say(sentences, sample)])
