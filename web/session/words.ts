import { use } from "react"
import { useStore } from "zustand"
import { createStore } from "zustand/vanilla"
import type { RefusalCode } from "../core/document/refusal"
import type { NotKept } from "../core/fields/notKept"
import type { Problem } from "../core/fields/problem"
import type { Words } from "../words/en/words"
import { type Language, languageFor, languageNames, loadWords } from "../words/every/languages"
import { type CodeOf, type Sentences, say } from "../words/say"

const key = "partline-language"

/** The language of the screen, and its words as soon as they are here. */
const wordsStore = createStore<{ language: Language; loading: Promise<Words>; words: Words | null }>(() => {
  const language = chosen() ?? languageFor(globalThis.navigator?.languages ?? [])
  return { language, loading: load(language), words: null }
})

function load(language: Language): Promise<Words> {
  const loading = loadWords(language)
  loading.then(
    (words) => {
      known(loading, words)
      if (wordsStore.getState().loading !== loading) return
      wordsStore.setState({ words })
      showLanguage(language, words)
    },
    // Whoever waits for them hears of it.
    () => {},
  )
  return loading
}

/** Lets `use` answer at once: React reads these two of a promise it is given, and else would wait for it once more. */
const known = (loading: Promise<Words>, words: Words) =>
  Object.assign(loading, { status: "fulfilled", value: words })

/** The words of the screen, for whoever runs after they have come. */
export function words(): Words {
  const { words: here } = wordsStore.getState()
  if (!here) throw new Error("the words of the screen were asked for before they came")
  return here
}

/** The words of the screen, or null while they are on their way: for whoever must be able to speak without them. */
export const wordsIfHere = (): Words | null => wordsStore.getState().words

/** Asks again for words that did not come. */
export function retryWords() {
  const { language, words: here } = wordsStore.getState()
  if (!here) wordsStore.setState({ loading: load(language) })
}

/** Resolves once the words of the screen are here. */
export const wordsHere = (): Promise<Words> => wordsStore.getState().loading

/**
 * The words of the screen; what uses them waits in its Suspense until they are here, and is drawn anew in another
 * language. `use` is asked every time: React counts on it when it draws again what had waited.
 */
export const useWords = (): Words => use(useStore(wordsStore, ({ loading }) => loading))

export const useLanguage = (): Language => useStore(wordsStore, ({ language }) => language)

/** Chooses the language of the screen, for the next visit too where the browser lets anything be kept. */
export async function chooseLanguage(language: Language) {
  const loading = loadWords(language)
  const words = await loading
  known(loading, words)
  wordsStore.setState({ language, loading, words })
  showLanguage(language, words)
  try {
    localStorage.setItem(key, language)
  } catch {
    // It holds until the window closes.
  }
}

function showLanguage(language: Language, words: Words) {
  if (typeof document === "undefined") return
  document.documentElement.lang = language
  document.title = words.plans.pageTitle
}

function chosen(): Language | undefined {
  try {
    const kept = localStorage.getItem(key)
    return languageNames.find((name) => name === kept)
  } catch {
    return undefined
  }
}

/** A change that was made, as the undo menu calls it: a code of a chapter's `done`, with its data. */
export type Done = { [C in keyof Words]: { readonly chapter: C } & CodeOf<Words[C]["done"]> }[keyof Words]

/** A change in the words of the screen. */
export function doneWords(done: Done): string {
  const { chapter, ...label } = done as { chapter: keyof Words; code: string }
  return say(words()[chapter].done as Sentences<{ code: string }>, label)
}

/** Why a change cannot be, in the words of the screen. */
export const refusalWords = (refused: RefusalCode): string => say(words().problems.refusals, refused)

/** Why a thing was not kept, in the words of the screen. */
export const notKeptWords = (why: NotKept): string => say(words().plans.notKept, why)

/** What is wrong with a file, in the words of the screen. */
export const problemWords = (problem: Problem): string => words().problems.sentence(problem)
