/** Beginnings of British words with the American ones, and words that stand for each other one for one. */
const american: readonly (readonly [british: RegExp, american: string])[] = [
  [/colour/gi, "color"],
  [/\bgrey/gi, "gray"],
  [/centre/gi, "center"],
  [/metre/gi, "meter"],
  [/\bneighbour/gi, "neighbor"],
  [/\bneutralis/gi, "neutraliz"],
  [/\bauthoris/gi, "authoriz"],
  [/\bpractise/gi, "practice"],
  [/\blicence/gi, "license"],
  [/\bjudgement/gi, "judgment"],
  [/\blearnt\b/gi, "learned"],
  [/\bcancelled\b/gi, "canceled"],
  [/\byoghurt/gi, "yogurt"],
  [/\bper cent/gi, "percent"],
  [/\btowards\b/gi, "toward"],
  [/\bafterwards\b/gi, "afterward"],
  [/\bround(?= the\b| several\b)/gi, "around"],
  [/\banticlockwise\b/gi, "counterclockwise"],
  [/\bbackcombed\b/gi, "teased"],
  [/\bbackcombing\b/gi, "teasing"],
  [/\bbackcomb/gi, "tease"],
  [/\bfringe\b/gi, "bangs"],
  [/(?<=\b(?:usual|center|side) )parting\b/gi, "part"],
  [/\bassessor/gi, "instructor"],
  [/\bear hole/gi, "ear opening"],
  [/\bwater spray\b/gi, "spray bottle"],
  [/\badhesive plasters\b/gi, "adhesive bandages"],
  [/\bthe bin\b/gi, "the trash"],
]

/** A text of ours, or each text of a group of them, in American spelling; functions stay. Never for what a person typed. */
export function spelled<T>(words: T): T
export function spelled(words: unknown): unknown {
  if (typeof words === "string") return american.reduce(inPlaceOf, words)
  if (Array.isArray(words)) return words.map(spelled)
  if (typeof words !== "object" || words === null) return words
  return Object.fromEntries(Object.entries(words).map(([name, value]) => [name, spelled(value)]))
}

/** A message that is told figures and words of ours only, nothing that a person typed, in American spelling. */
export const spelledMessage =
  <Given extends readonly unknown[], Said>(message: (...given: Given) => Said) =>
  (...given: Given): Said =>
    spelled(message(...given))

const inPlaceOf = (text: string, [british, word]: (typeof american)[number]): string =>
  text.replace(british, (found) => (/^[A-Z]/.test(found) ? word[0].toUpperCase() + word.slice(1) : word))
