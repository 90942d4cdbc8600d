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
      override: "Anular un bloqueo por escrito",
      "undo-override": "Deshacer una anulación",
      "add-letter": "Añadir una carta médica",
      "remove-letter": "Quitar una carta médica",
      "ask-aloud": "Responder que no a lo preguntado en voz alta",
    },
    /** What each row is called, where its sentence would be too long. */
    rules: ruleNames,
    /** A stop as the command tells it beside the bowls. */
    held: (why: string) => `No mezclar: ${why}`,
    /** What each row found. */
    why: { ...clientCautions(t), ...mixCautions(t, mixName) },
    testFaults: alertTestFaults(t),
    decides: deciders,
    sources,
    authority: (decides: Decider, source: Source) =>
      `Quién decide: ${deciders[decides]}. Fuente: ${sources[source]}.`,
    /** The panel of stops under Formula. */
    panel: {
      cautions: (count: number) => t.count(count, { one: "# advertencia", other: "# advertencias" }),
      notKnown: (count: number) =>
        t.count(count, { one: "# dato más sin saber", other: "# datos más sin saber" }),
      /** The one way out where nothing can be overridden. */
      ways: {
        plan: "Este bloqueo no se puede anular. Cambie el plan o introduzca lo que haya cambiado.",
        letter: "Este bloqueo no se puede anular. Cambie el plan o añada una carta del médico de su cliente.",
      },
      letter: "Añadir una carta médica",
      letterFrom: "Médico o consulta",
      letterDated: "Fecha de la carta",
      saveLetter: "Guardar la carta",
      letterWanting: "Indique quién escribió la carta y su fecha: hoy o antes.",
      answered: (from: string, dated: string) => `Carta de ${from}, ${t.date(dated)}.`,
      removeLetter: "Quitar la carta",
      toAnswer: "Ir a la respuesta",
      showNotAsked: "Lo que no se ha preguntado",
      override: "Anular por escrito",
      overrideThis: "Anular este bloqueo",
      printed:
        "El motivo y su nombre se imprimen en el mapa, donde otros pueden leerlos. No nombre una enfermedad.",
      reason: "Motivo",
      by: "Su nombre",
      wanting: "Introduzca antes un motivo y su nombre.",
      overridden: (by: string, reason: string) => `Anulado por ${by}: ${reason}`,
      wasOverridden: ({ on, by, reason }: Pick<Pass, "on" | "by" | "reason">) =>
        on
          ? `Anulado el ${t.date(on)} por ${by}: ${fullStop(reason)} Pregunte de nuevo.`
          : `Anulado por ${by}, no se sabe para qué visita: ${fullStop(reason)} Pregunte de nuevo.`,
      undo: "Deshacer la anulación",
      doNotMix: "No mezcle. Resuelva antes el bloqueo de arriba.",
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
const tonerNames: Readonly<Record<string, string>> = { toner: "matizador", "root-shade": "tono de raíz" }

export type CautionsWords = ReturnType<typeof cautions>
