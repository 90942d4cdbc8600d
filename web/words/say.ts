/** What the core tells: a code, and beside it the data that a sentence needs. */
export type Coded = { readonly code: string }

/** A sentence for every code of a union: a missing code, or one that reads data it does not have, does not compile. */
export type Sentences<T extends Coded> = {
  readonly [C in T["code"]]: string | ((data: Extract<T, { code: C }>) => string)
}

/** The codes that a group of sentences knows, each with its data: for what is said by whoever holds the words. */
export type CodeOf<S> = {
  [C in keyof S & string]: S[C] extends (data: infer D) => string
    ? { readonly code: C } & D
    : { readonly code: C }
}[keyof S & string]

/** The sentence of a code. */
export function say<T extends Coded>(sentences: Sentences<T>, coded: T): string {
  const sentence = (sentences as Record<string, string | ((data: T) => string)>)[coded.code]
  return typeof sentence === "function" ? sentence(coded) : sentence
}
