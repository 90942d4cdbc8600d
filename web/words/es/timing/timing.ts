import type { ViewName } from "../../../../geometry/surface/views"
import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { clashes } from "./clashes"
import { settings } from "./settings"

export const timing = (t: Tools) => {
  const found = clashes(t)
  return {
    title: "Tiempos",
    none: "Por qué no hay reloj",
    toPlacement: "Dibujar el primer papel",
    toChair: "Empezar en el sillón",

    /** What undo calls a change of this chapter. */
    done: {
      ...found.fixes,
      "set-pace": "Cambiar el ritmo",
      "set-hands": "Cambiar quién trabaja",
      "set-people": "Cambiar los nombres",
      "set-side": "Cambiar el lado de asistente",
      "set-rinse": "Cambiar cómo se retiran los papeles",
      "set-lift": "Cambiar los niveles",
      "set-booking": "Cambiar la duración de la cita",
      "set-drying": "Cambiar el secado",
      "set-heat": "Cambiar el calor",
      "set-breaks": "Cambiar las pausas",
      "learn-pace": "Planificar con el ritmo medido",
      "learn-second-pace": "Planificar asistente con el ritmo medido",
      "set-strand": "Guardar una prueba de mechón",
      "remove-strand": "Quitar la prueba de mechón",
      "bring-back": "Recuperar los papeles para otro día",
      "own-visit": "Pasar los papeles para otro día a su propio plan",
      "usual-bowls": "Repartir los boles como siempre",
      "next-time": "Guardar la nota para la próxima vez",
    },

    figures: {
      lastOn: (_: Piece): string => "Último puesto",
      firstCheck: "1.ª revisión",
      lastOff: (_: Piece): string => "Último retirado",
      inChair: "En el sillón",
      /** A minute of the visit, counted from the first parting. */
      minute: (min: number) => `minuto ${t.whole(min)}`,
      noCheck: "–",
      /** A stretch of time, to five minutes: "1 h 40 to 2 h 25". */
      span: ({ low, high }: { low: number; high: number }) => {
        const [from, to] = [hours(t, low), hours(t, high)]
        return from === to ? from : `${from} a ${to}`
      },
    },

    chart: {
      title: "Minuto a minuto",
      name: "Gráfico de la visita; la tabla de abajo dice lo mismo",
      min: "min",
      break: "pausa",
      firstRests: "pausa de colorista",
      secondRests: "pausa de asistente",
      heat: "calor",
      key: ({ limit }: { limit: string }) =>
        `Barra: tiempo puesto. Borde solo: puede estar listo. ${limit}: tiempo máximo. Puntos: una revisión. Triángulo: mezclar ese bol.`,
      limit: "Línea roja",
    },

    head: {
      title: "La cabeza en un minuto",
      slider: "Minuto de la visita",
      views: {
        front: "Frente",
        right: "Der. de cliente",
        left: "Izq. de cliente",
        back: "Detrás",
        top: "Arriba",
      } satisfies Record<Exclude<ViewName, "turned" | "unrolled">, string>,
      key: "Más oscuro = más tiempo puesto; negro = tiempo máximo. Puntos = aún sin poner. Solo borde = retirado. Muestra tiempo, no resultado.",
      onMap: "Ver en el mapa grande",
    },

    table: {
      title: (piece: Piece): string =>
        ({
          foil: "Tiempos de cada papel",
          panel: "Tiempos de cada panel",
          both: "Tiempos de cada papel y panel",
        })[piece],
      name: (piece: Piece): string =>
        ({
          foil: "Tiempos de todos los papeles",
          panel: "Tiempos de todos los paneles",
          both: "Tiempos de todos los papeles y paneles",
        })[piece],
      foil: (piece: Piece): string => ({ foil: "Papel", panel: "Panel", both: "Papel o panel" })[piece],
      on: "Inicio",
      check: "Revisar",
      ready: "Listo de–a",
      off: "Fin",
      limit: "Tiempo máx. (retirar en)",
      minutesOn: "Min puesto",
      what: ({ kind, place }: { kind: string; place: string }) => `${t.capital(kind)}, ${place}`,
      none: "–",
      readyRange: ({ low, high }: { low: number; high: number }) => {
        if (Number.isFinite(high)) return t.spread(t.whole(low), t.whole(high))
        return Number.isFinite(low) ? `${t.whole(low)} o no a tiempo` : "no a tiempo"
      },
      minute: t.whole,
    },

    after: {
      title: (piece: Piece): string =>
        ({
          foil: "Tras el último papel",
          panel: "Tras el último panel",
          both: "Tras el último papel o panel",
        })[piece],
      rinse: "Enjuagar",
      detangle: "Desenredar el cardado, mojado, de las puntas hacia arriba",
      dry: "Secar",
      toners: {
        "root-melt": "Difuminado de raíz",
        mids: "Matizador, medios",
        hairline: "Matizador, contorno",
      } satisfies Record<ToneZoneName, string>,
      line: ({ what, from, to }: { what: string; from: number; to: number }) =>
        `${what}: del minuto ${t.whole(from)} al ${t.whole(to)}`,
    },

    strand: {
      title: "Prueba de mechón",
      testedIn: "Probado en",
      mix: ({ mix, volume }: { mix: string; volume: number }) => `Mezcla ${mix}, ${t.number(volume)} vol`,
      otherMix: ({ product, volume }: { product: string; volume: number }) =>
        `Se probó un mechón en ${product} con ${t.number(volume)} vol. Ya no hay ninguna mezcla así; aun así informa del cabello.`,
      before: "Nivel del mechón antes",
      remove: "Quitar la prueba",
      add: "Añadir una revisión del mechón",
      minutes: "Min puesto",
      level: "Nivel visto",
      removeRow: "Quitar",
      noCurve: (mix: string) =>
        `${mix}: la ficha no indica aclaración para este oxidante, así que no hay curva. Revise el mechón y anótelo.`,
      untilThen: (fault: string) => `${fault} Hasta entonces vale la curva de la ficha.`,
      noGoal: "Introduzca el nivel deseado; después salen los minutos en que revisar.",
      curve: "Curva",
      curveName: (mix: string) =>
        `Curva de aclaración de ${mix} por minutos puesto; la frase de arriba dice lo que se sigue de ella`,
      key: "Línea: el centro. Banda: cuatro de cada cinco cabezas. Rayas: el nivel deseado. Una estimación, nunca una promesa: decide el cabello.",
      dots: "Puntos: el mechón.",
      borrowed: "Según el mechón en la otra mezcla: es el mismo cabello.",
      misfit: "El mechón no sigue bien la curva: revise más a menudo.",
      minutesOn: "minutos puesto",
    },

    actual: {
      title: "Previsto y real",
      when: (wallMs: number) => `${t.dayAndTime(wallMs)}. Los minutos cuentan desde la primera raya.`,
      name: (piece: Piece): string =>
        ({
          foil: "Tiempos previstos y reales de cada papel",
          panel: "Tiempos previstos y reales de cada panel",
          both: "Tiempos previstos y reales de cada papel y panel",
        })[piece],
      foil: (piece: Piece): string => ({ foil: "Papel", panel: "Panel", both: "Papel o panel" })[piece],
      onPlanned: "Inicio previsto",
      onActual: "Inicio real",
      minutesPlanned: "Min puesto, previsto",
      minutesActual: "Min puesto, real",
      notOn: "sin poner",
      none: "–",
      minute: t.whole,
    },

    lessons: {
      title: "Ritmo en el sillón",
      name: "Minutos por papel, por persona y tipo",
      who: "Quién",
      timed: "Papeles medidos",
      kind: (kind: string) => `${t.capital(kind)}, min`,
      noName: "Sin nombre",
      foils: ({ foils, services }: { foils: number; services: number }) =>
        `${t.whole(foils)} en ${t.count(services, { one: "# servicio", other: "# servicios" })}`,
      range: ({ low, high }: { low: number; high: number }) => t.spread(t.fixed(low, 1), t.fixed(high, 1)),
      none: "–",
      planWith: (person: string) =>
        person ? `Planificar con el ritmo de ${person}` : "Planificar con este ritmo",
      asAssistant: (person: string) => (person ? `${person} como asistente` : "Asistente con este ritmo"),
    },

    alarms: {
      title: "Qué salió mal",
      line: ({ wallMs, what }: { wallMs: number; what: string }) => `${t.dayAndTime(wallMs)}: ${what}`,
    },

    nextTime: {
      title: "La próxima vez",
      where: "Se imprime en la ficha de cliente, no en el mapa.",
    },

    /** What the headless command says of its figures. */
    command: {
      lift: "Los tiempos son una estimación según la aclaración de la ficha de producto. Una prueba de mechón la afina; revise y retire lo que esté listo.",
      noLift:
        "Sin --from y --to los tiempos son los típicos (una suposición). Revise y retire lo que esté listo.",
    },

    assumedTitle: "Lo que se supone",
    ...found,
    settings: settings(t),
  }
}

function hours(t: Tools, min: number): string {
  const rounded = Math.round(min / 5) * 5
  const [whole, rest] = [Math.floor(rounded / 60), rounded % 60]
  if (whole === 0) return t.minutes(rest)
  return rest === 0 ? `${whole} h` : `${whole} h ${rest}`
}

export type TimingWords = ReturnType<typeof timing>
