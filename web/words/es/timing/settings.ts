import type { Skill } from "../../../../presets/timing/pace"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** How the visit goes: one line that says it, and the fields that change it. */
export const settings = (t: Tools) => {
  const pace: Record<Skill | "learnt", string> = {
    expert: "Ritmo experto",
    usual: "Ritmo habitual",
    learner: "Ritmo de aprendiz",
    learnt: "Ritmo medido",
  }
  return {
    title: "Cómo va la visita",
    change: "Cambiar",
    close: "Cerrar",
    /** The settings in one line. */
    line: (now: {
      pace: Skill | "learnt"
      people: 1 | 2
      rinse: "each" | "together"
      bookingMin: number | null
      heatMin: number | null
      isDried: boolean
      breaks: number
      piece: Piece
    }) =>
      `${[
        pace[now.pace],
        now.people === 1 ? "una persona" : "colorista y asistente",
        now.rinse === "each"
          ? `cada ${pieces(t).word(1, now.piece)} se retira al estar listo`
          : "todos en un enjuague",
        ...(now.heatMin === null ? [] : [`${t.minutes(now.heatMin)} de calor`]),
        ...(now.breaks === 0 ? [] : [t.count(now.breaks, { one: "# pausa", other: "# pausas" })]),
        ...(now.isDried ? [] : ["sin secar"]),
        now.bookingMin === null
          ? "duración de la cita sin definir"
          : `${t.minutes(now.bookingMin)} reservados`,
      ].join(", ")}.`,

    pace: "Ritmo",
    /** A pace and its minutes per foil. */
    paceOption: ({ name, low, high }: { name: Skill | "learnt"; low: number; high: number }) =>
      `${pace[name]} ${t.spread(t.number(low, 1), t.number(high, 1))} min por papel`,

    working: "Trabaja",
    alone: "Una persona",
    two: "Colorista y asistente",
    who: "Colorista",
    assistant: "Asistente",
    assistantSide: "Lado de asistente",
    sides: { left: "Izq. de cliente", right: "Der. de cliente" },

    off: (piece: Piece) => `Retirada de ${pieces(t).word(2, piece)}`,
    each: "Cada uno al estar listo",
    together: "Todos en un enjuague",

    lift: "Aclaración",
    asAsked: "Según la consulta",
    notSet: "Sin definir",
    levels: "De nivel a nivel",
    fromTo: ({ from, to }: { from: number; to: number }) => `Del nivel ${t.number(from)} al ${t.number(to)}`,
    levelNow: "Nivel actual",
    target: "Nivel deseado",

    appointment: "Duración de la cita",
    inMinutes: "Minutos en el sillón",
    booked: "Minutos reservados",
    drying: "Secado",
    dried: "En el sillón",
    damp: "Sin secar",

    heat: "Calor, si lo permiten las instrucciones del fabricante",
    noHeat: "Ninguno",
    minutes: (minutes: number) => t.minutes(minutes),
    temperature: "Temperatura, si se mide",

    breaks: "Pausas",
    fromMin: "Del minuto",
    toMin: "Al minuto",
    whoRests: "Quién descansa",
    rests: { both: "Pausa de ambos", "1": "Pausa de colorista", "2": "Pausa de asistente" },
    addBreak: "Añadir una pausa",
    removeBreak: "Quitar",
  }
}
