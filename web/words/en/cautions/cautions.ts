import type { Decider, Source } from "../../../core/cautions/rules/rule"
import type { Pass, Question, StrandPart } from "../../../core/document/consultation"
import { fullStop } from "../../fullStop"
import type { Tools } from "../../tools"
import { deciders, sources } from "./authority"
import { clearanceWords } from "./clearanceWords"
import { alertTestFaults, clientCautions } from "./clientCautions"
import { mixCautions } from "./mixCautions"
import { notAskedWords, notKnownWords } from "./notKnownWords"
import { publicWords } from "./publicWords"
import { ruleNames } from "./ruleNames"

/** What this chapter says in the words of others: zones and parts, names of mixes, questions. */
type Shared = {
  mix(letter: string): string
  strandParts: Readonly<Record<StrandPart, string>>
  questions: Readonly<Record<Question, string>>
}

export const cautions = (t: Tools, shared: Shared) => {
  const [rules, deciderNames] = [t.spelled(ruleNames), t.spelled(deciders)]
  const mixName = (id: string) => t.capital(tonerNames[id] ?? shared.mix(id))
  return {
    done: {
      override: "Override a stop in writing",
      "undo-override": "Undo an override",
      "add-letter": "Enter a doctor’s letter",
      "remove-letter": "Remove a doctor’s letter",
      "ask-aloud": "Answer no to what was asked aloud",
    },
    /** What each row is called, where its sentence would be too long. */
    rules,
    /** A stop as the command tells it beside the bowls. */
    held: (why: string) => `Do not mix: ${why}`,
    /** What each row found. */
    why: { ...clientCautions(t), ...mixCautions(t, mixName) },
    testFaults: alertTestFaults(t),
    decides: deciderNames,
    sources,
    authority: (decides: Decider, source: Source) =>
      `Whose decision: ${deciderNames[decides]}. Source: ${sources[source]}.`,
    /** The panel of stops under Formula. */
    panel: {
      cautions: (count: number) => t.count(count, { one: "# caution", other: "# cautions" }),
      notKnown: (count: number) =>
        t.count(count, { one: "# more thing not known", other: "# more things not known" }),
      /** The one way out where nothing can be overridden. */
      ways: {
        plan: "This stop cannot be overridden. Change the plan, or enter what has changed.",
        letter: "This stop cannot be overridden. Change the plan, or enter a letter of the client’s doctor.",
      },
      letter: "Enter a doctor’s letter",
      letterFrom: "Doctor or practice",
      letterDated: "Date of the letter",
      saveLetter: "Save the letter",
      letterWanting: "Enter who wrote the letter, and its date: today or earlier.",
      answered: (from: string, dated: string) => `Letter of ${from}, ${t.date(dated)}.`,
      removeLetter: "Remove the letter",
      toAnswer: "Go to the answer",
      showNotAsked: "What has not been asked",
      override: "Override in writing",
      overrideThis: "Override this stop",
      printed:
        "The reason and your name are printed on the map, where others can read them. Do not name an illness.",
      reason: "Reason",
      by: "Your name",
      wanting: "Enter a reason and your name first.",
      overridden: (by: string, reason: string) => `Overridden by ${by}: ${reason}`,
      /** An override written for another visit. */
      wasOverridden: ({ on, by, reason }: Pick<Pass, "on" | "by" | "reason">) =>
        on
          ? `Was overridden on ${t.date(on)} by ${by}: ${fullStop(reason)} Ask again.`
          : `Was overridden by ${by}, for which visit nobody knows: ${fullStop(reason)} Ask again.`,
      undo: "Undo the override",
      doNotMix: "Do not mix. Resolve the stop above first.",
    },
    /** What nobody has asked or looked at. */
    notKnown: notKnownWords(t, shared.strandParts),
    /** What can hurt and was not asked. */
    notAsked: notAskedWords(t, shared),
    /** Whether the plan may be mixed. */
    clearance: clearanceWords(t),
    /** Stops as a sheet that others may read tells them. */
    onSheet: publicWords(t, mixName, rules),
  }
}

/** What the toners go by, beside mixes with a letter. */
const tonerNames: Readonly<Record<string, string>> = { toner: "the toner", "root-shade": "the root shade" }

export type CautionsWords = ReturnType<typeof cautions>
