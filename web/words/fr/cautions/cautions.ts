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
  const mixName = (id: string) => t.capital(tonerNames[id] ?? shared.mix(id))
  return {
    done: {
      override: "Écrire une dérogation à un blocage",
      "undo-override": "Annuler une dérogation",
      "add-letter": "Saisir un courrier de médecin",
      "remove-letter": "Retirer un courrier de médecin",
      "ask-aloud": "Répondre non à ce qui a été demandé",
    },
    /** What each row is called, where its sentence would be too long. */
    rules: ruleNames,
    /** A stop as the command tells it beside the bowls. */
    held: (why: string) => `Ne pas mélanger : ${why}`,
    /** What each row found. */
    why: { ...clientCautions(t), ...mixCautions(t, mixName) },
    testFaults: alertTestFaults(t),
    decides: deciders,
    sources,
    authority: (decides: Decider, source: Source) =>
      `Qui décide : ${deciders[decides]}. Source : ${sources[source]}.`,
    /** The panel of stops under Formula. */
    panel: {
      cautions: (count: number) => t.count(count, { one: "# mise en garde", other: "# mises en garde" }),
      notKnown: (count: number) =>
        t.count(count, { one: "# autre point non connu", other: "# autres points non connus" }),
      /** The one way out where nothing can be overridden. */
      ways: {
        plan: "Aucune dérogation possible à ce blocage. Modifiez le plan, ou saisissez ce qui a changé.",
        letter:
          "Aucune dérogation possible à ce blocage. Modifiez le plan, ou saisissez un courrier du médecin de la personne.",
      },
      letter: "Saisir un courrier de médecin",
      letterFrom: "Médecin ou cabinet",
      letterDated: "Date du courrier",
      saveLetter: "Enregistrer",
      letterWanting: "Saisissez l’auteur du courrier et sa date : aujourd’hui ou avant.",
      answered: (from: string, dated: string) => `Courrier de ${from}, ${t.date(dated)}.`,
      removeLetter: "Retirer le courrier",
      toAnswer: "Aller à la réponse",
      showNotAsked: "Ce qui n’a pas été demandé",
      override: "Dérogation écrite",
      overrideThis: "Déroger à ce blocage",
      printed:
        "Le motif et votre nom sont imprimés sur le schéma, où d’autres peuvent les lire. Ne nommez pas de maladie.",
      reason: "Motif",
      by: "Votre nom",
      wanting: "Saisissez d’abord un motif et votre nom.",
      overridden: (by: string, reason: string) => `Dérogation de ${by} : ${reason}`,
      wasOverridden: ({ on, by, reason }: Pick<Pass, "on" | "by" | "reason">) =>
        on
          ? `Dérogation du ${t.date(on)} par ${by} : ${fullStop(reason)} À redemander.`
          : `Dérogation de ${by}, on ne sait pas pour quelle séance : ${fullStop(reason)} À redemander.`,
      undo: "Annuler la dérogation",
      doNotMix: "Ne pas mélanger. Réglez d’abord le blocage ci-dessus.",
    },
    /** What nobody has asked or looked at. */
    notKnown: notKnownWords(t, shared.strandParts),
    /** What can hurt and was not asked. */
    notAsked: notAskedWords(t, shared),
    /** Whether the plan may be mixed. */
    clearance: clearanceWords(t),
    /** Stops as a sheet that others may read tells them. */
    onSheet: publicWords(t, mixName),
  }
}

/** What the toners go by, beside mixes with a letter. */
const tonerNames: Readonly<Record<string, string>> = { toner: "la patine", "root-shade": "la nuance racine" }
