import type { NotKnown } from "../../../core/cautions/notKnown"
import type { Decider, Source } from "../../../core/cautions/rules/rule"
import type { Question, StrandPart } from "../../../core/document/consultation"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { deciders, sources } from "./authority"
import { alertTestFaults, clientCautions } from "./clientCautions"
import { mixCautions } from "./mixCautions"
import { publicWords } from "./publicWords"
import { ruleNames } from "./ruleNames"

/** What this chapter says in the words of others: zones and parts, names of mixes, questions. */
type Shared = {
  mix(letter: string): string
  strandParts: Readonly<Record<StrandPart, string>>
  questions: Readonly<Record<Question, string>>
}

export const cautions = (t: Tools, shared: Shared) => {
  const mixName = (id: string) => t.capital(tonerNames[id] ?? shared.mix(id))
  return {
    done: {
      override: "Override a stop in writing",
      "undo-override": "Undo an override",
    },
    /** What each row is called, where its sentence would be too long. */
    rules: ruleNames,
    /** A stop as the command tells it beside the bowls. */
    held: (why: string) => `Do not mix: ${why}`,
    /** What each row found. */
    why: { ...clientCautions(t), ...mixCautions(t, mixName) },
    testFaults: alertTestFaults(t),
    decides: deciders,
    sources,
    authority: (decides: Decider, source: Source) =>
      `Whose decision: ${deciders[decides]}. Source: ${sources[source]}.`,
    /** The panel of stops under Formula. */
    panel: {
      title: (stops: number, notKnown: number) =>
        stops > 0
          ? t.count(stops, { one: "Do not mix: # stop", other: "Do not mix: # stops" })
          : notKnown > 0
            ? t.count(notKnown, {
                one: "No stop so far (# thing not asked)",
                other: "No stop so far (# things not asked)",
              })
            : "No stop so far",
      cautions: (count: number) => t.count(count, { one: "# caution", other: "# cautions" }),
      notKnown: (count: number) =>
        t.count(count, { one: "# thing not asked yet", other: "# things not asked yet" }),
      final: "This stop cannot be overridden.",
      override: "Override in writing",
      overrideThis: "Override this stop",
      printed:
        "The reason and your name are printed on the map, where others can read them. Do not name an illness.",
      reason: "Reason",
      by: "Your name",
      wanting: "Enter a reason and your name first.",
      overridden: (by: string, reason: string) => `Overridden by ${by}: ${reason}`,
      undo: "Undo the override",
      doNotMix: "Do not mix. Resolve the stop above first.",
      chair: "Stop: do not mix. Resolve it under Formula first.",
    },
    /** What nobody has asked or looked at. */
    notKnown: notKnownWords(t, shared),
    /** Stops as a sheet that others may read tells them. */
    onSheet: publicWords(t, mixName),
  }
}

/** What the toners go by, beside mixes with a letter. */
const tonerNames: Readonly<Record<string, string>> = { toner: "the toner", "root-shade": "the root shade" }

function notKnownWords(t: Tools, { strandParts, questions }: Shared) {
  const hair =
    (words: string) =>
    ({ parts }: Extract<NotKnown, { parts: unknown }>) =>
      parts === null ? words : `${words}: ${t.and(parts.map((part) => strandParts[part]))}`
  return {
    "target-level": "Target level",
    finish: "Finish tone",
    brightest: "Brightest where",
    "root-distance": "How close to the root",
    grey: "How much is grey",
    upkeep: "How often the client will come back",
    age: "Age",
    scalp: "Scalp",
    question: ({ question }) => questions[question],
    level: hair("Level now"),
    history: hair("Hair history"),
    porosity: hair("Porosity"),
    stretch: hair("Elasticity, stretched wet"),
  } satisfies Sentences<NotKnown>
}

export type CautionsWords = ReturnType<typeof cautions>
