import type { Clearance } from "../../../core/cautions/clearance"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"

type Told = Pick<Clearance, "state" | "day" | "by"> & {
  stops: readonly unknown[]
  notAsked: readonly unknown[]
}

/** The three states of a plan: do not mix, not asked yet, cleared. */
export function clearanceWords(t: Tools) {
  const stops = (count: number) =>
    t.count(count, { one: "No mezclar: # bloqueo", other: "No mezclar: # bloqueos" })
  const notAsked = (count: number) => t.count(count, { one: "Sin preguntar: #", other: "Sin preguntar: #" })
  const clearedBy = ({ by, day }: Told) => {
    const things = t.and([
      t.count(by.answers, { one: "# respuesta", other: "# respuestas" }),
      ...(by.tests > 0
        ? [
            t.count(by.tests, {
              one: "# prueba de alergia leída sin reacción",
              other: "# pruebas de alergia leídas sin reacción",
            }),
          ]
        : []),
      ...(by.letters > 0 ? [t.count(by.letters, { one: "# carta médica", other: "# cartas médicas" })] : []),
      ...(by.overrides > 0 ? [t.count(by.overrides, { one: "# anulación", other: "# anulaciones" })] : []),
    ])
    return by.askedBy.trim() === ""
      ? `Visto bueno del ${t.date(day)} por ${things}.`
      : `Visto bueno del ${t.date(day)} (preguntó ${by.askedBy}) por ${things}.`
  }
  return {
    /** In the top bar. */
    pill: (told: Told) =>
      told.state === "stop"
        ? stops(told.stops.length)
        : told.state === "not-asked"
          ? notAsked(told.notAsked.length)
          : "Visto bueno hoy",
    /** At the head of a screen. */
    head: (told: Told) =>
      told.state === "stop"
        ? `${stops(told.stops.length)}.`
        : told.state === "not-asked"
          ? `${notAsked(told.notAsked.length)}.`
          : clearedBy(told),
    /** One sentence for the command. */
    sentence: (told: Told) =>
      told.state === "stop"
        ? t.count(told.stops.length, {
            one: "NO MEZCLAR: # bloqueo detiene el plan.",
            other: "NO MEZCLAR: # bloqueos detienen el plan.",
          })
        : told.state === "not-asked"
          ? t.count(told.notAsked.length, {
              one: "SIN VISTO BUENO: # punto no se ha preguntado aún.",
              other: "SIN VISTO BUENO: # puntos no se han preguntado aún.",
            })
          : clearedBy(told),
    list: "Lo que falta",
    stopsTitle: "No mezclar",
    notAskedTitle: "Aún sin preguntar",
    none: "Para hoy no falta nada.",
    goTo: "Ir a",
    close: "Cerrar",
    /** What may be answered together, aloud. */
    aloud: {
      title: "Preguntado en voz alta",
      aside: (count: number) =>
        t.count(count, {
          one: "Una pregunta se puede responder con «no» preguntándola en voz alta. Su nombre se guarda con la respuesta.",
          other:
            "# preguntas se pueden responder con «no» preguntándolas en voz alta. Su nombre se guarda con las respuestas.",
        }),
      by: "Su nombre",
      sign: "Preguntado en voz alta: no a todo esto",
      wanting: "Introduzca antes su nombre.",
    },
    /** At the chair, before the clock starts. */
    chairStop: "No mezcle. Resuelva antes los bloqueos.",
    chairNotAsked: "Pregunte esto antes de poner en marcha el reloj.",
    chairHeld: (piece: Piece) =>
      `Ha aparecido un bloqueo. No empiece ${{ foil: "más papeles", panel: "más paneles", both: "más papeles ni paneles" }[piece]} ni mezcle otro bol. Revise y aclare lo que está puesto.`,
    chairOpen: (piece: Piece) =>
      `Ha quedado abierta una pregunta. No empiece ${{ foil: "más papeles", panel: "más paneles", both: "más papeles ni paneles" }[piece]} ni mezcle otro bol antes de responderla. Revise y aclare lo que está puesto.`,
  }
}
