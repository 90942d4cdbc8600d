import type { cautions as english } from "../../en/cautions/cautions"
import { fullStop } from "../../fullStop"
import { deciders, sources } from "./authority"
import { clearanceWords } from "./clearanceWords"
import { alertTestFaults, clientCautions } from "./clientCautions"
import { mixCautions } from "./mixCautions"
import { notAskedWords, notKnownWords } from "./notKnownWords"
import { publicWords } from "./publicWords"
import { ruleNames } from "./ruleNames"

export const cautions: typeof english = (t, shared) => {
  const mixName = (id: string) => t.capital(tonerNames[id] ?? shared.mix(id))
  return {
    done: {
      override: "Stopp schriftlich übergehen",
      "undo-override": "Stopp wieder setzen",
      "add-letter": "Ärztliches Schreiben eintragen",
      "remove-letter": "Ärztliches Schreiben entfernen",
      "ask-aloud": "Laut Gefragtes mit Nein beantworten",
    },
    rules: ruleNames,
    held: (why) => `Nicht mischen: ${why}`,
    why: { ...clientCautions(t), ...mixCautions(t, mixName) },
    testFaults: alertTestFaults(t),
    decides: deciders,
    sources,
    authority: (decides, source) => `Wer entscheidet: ${deciders[decides]}. Quelle: ${sources[source]}.`,
    panel: {
      cautions: (count) => t.count(count, { one: "# Warnhinweis", other: "# Warnhinweise" }),
      notKnown: (count) =>
        t.count(count, { one: "# weitere Angabe nicht bekannt", other: "# weitere Angaben nicht bekannt" }),
      ways: {
        plan: "Dieser Stopp kann nicht übergangen werden. Den Plan ändern oder eintragen, was sich geändert hat.",
        letter:
          "Dieser Stopp kann nicht übergangen werden. Den Plan ändern oder ein ärztliches Schreiben des Gastes eintragen.",
      },
      letter: "Ärztliches Schreiben eintragen",
      letterFrom: "Arzt, Ärztin oder Praxis",
      letterDated: "Datum des Schreibens",
      saveLetter: "Schreiben sichern",
      letterWanting: "Eintragen, wer geschrieben hat, und das Datum: heute oder früher.",
      answered: (from, dated) => `Schreiben von ${from}, ${t.date(dated)}.`,
      removeLetter: "Schreiben entfernen",
      toAnswer: "Zur Antwort",
      showNotAsked: "Was nicht gefragt wurde",
      override: "Schriftlich übergehen",
      overrideThis: "Stopp übergehen",
      printed: "Grund und Name stehen auf der Karte, wo andere sie lesen können. Keine Krankheit nennen.",
      reason: "Grund",
      by: "Ihr Name",
      wanting: "Zuerst Grund und Ihren Namen eingeben.",
      overridden: (by, reason) => `Übergangen von ${by}: ${reason}`,
      wasOverridden: ({ on, by, reason }) =>
        on
          ? `Am ${t.date(on)} übergangen von ${by}: ${fullStop(reason)} Neu fragen.`
          : `Übergangen von ${by}, unbekannt für welchen Termin: ${fullStop(reason)} Neu fragen.`,
      undo: "Stopp wieder setzen",
      doNotMix: "Nicht mischen. Zuerst den Stopp oben klären.",
    },
    notKnown: notKnownWords(t, shared.strandParts),
    notAsked: notAskedWords(t, shared),
    clearance: clearanceWords(t),
    onSheet: publicWords(t, mixName, ruleNames),
  }
}

/** What the toners go by, beside mixes with a letter. */
const tonerNames: Readonly<Record<string, string>> = { toner: "der Toner", "root-shade": "der Ansatzton" }
