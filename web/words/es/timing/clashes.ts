import type { FixCode } from "../../../core/fixes/fix"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { LiftsFirst } from "../../../core/lift/liftsFirst"
import type { GoalRefusal } from "../../../core/lift/scheduleReady"
import type { ConflictCode } from "../../../core/schedule/conflicts"
import type { HeatRefusal } from "../../../core/schedule/heatRefusal"
import type { TimingAssumption, TimingProblem } from "../../../core/schedule/timedPlan"
import type { OfPieces } from "../../pieceWords"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** What the clock finds: why there is none, what was assumed, what clashes, and what mends it. */
export const clashes = (t: Tools) => {
  const min = (minutes: number) => t.minutes(minutes, 1)
  const numbers = (foils: readonly number[]) => t.runs(foils, (from, to) => `${from} a ${to}`)
  const { word, names } = pieces(t)
  const foils = (list: readonly number[], piece?: Piece) => `${word(list.length, piece)} ${numbers(list)}`
  const others = (count: number) =>
    count === 0 ? "" : t.count(count, { one: " (y # más)", other: " (y # más)" })

  const goals = {
    "from-off-scale": ({ level, darkest, lightest }) =>
      `El nivel actual es ${t.number(level)}: la escala va de ${darkest} a ${lightest}.`,
    "to-off-scale": ({ level, darkest, lightest }) =>
      `El nivel deseado es ${t.number(level)}: la escala va de ${darkest} a ${lightest}.`,
    "not-lighter": "El nivel deseado debe ser más claro que el nivel actual.",
  } satisfies Sentences<GoalRefusal>

  const orOverride = "Apague el calor o anule ese bloqueo por escrito."
  const heat = {
    "too-warm": ({ ceilingC, warmthC }) =>
      `Sin calor: la aclaración no se calcula por encima de ${t.number(ceilingC)} °C, y se introdujeron ${t.number(warmthC)} °C. Baje la temperatura.`,
    "not-on-sheet": "Sin calor: la ficha de producto no lo permite. Apague el calor.",
    "strong-mix": ({ mix, volume }) =>
      `Sin calor: la mezcla ${mix} lleva ${t.number(volume)} vol. ${orOverride}`,
    "at-hairline": `Sin calor: hay papeles en el contorno. ${orOverride}`,
    cushion: `Sin calor: hay un colchón cardado cerca de la raíz. ${orOverride}`,
    "longer-than-usual": ({ usualMostMin, askedMin }) =>
      `El calor suele durar ${min(usualMostMin)} como máximo: se introdujeron ${min(askedMin)}. ${orOverride}`,
    "too-long": ({ mostMin, askedMin }) =>
      `La ficha de producto permite ${min(mostMin)} de calor como máximo: se introdujeron ${min(askedMin)}. Acorte el calor.`,
    "no-minutes": "El calor debe durar más de 0 minutos.",
  } satisfies Sentences<HeatRefusal>

  const first = {
    hairline: "El cabello del contorno aclara primero: se espera listo",
    fine: "El cabello fino aclara antes: se espera listo",
  } satisfies Record<LiftsFirst, string>

  return {
    problems: {
      "no-foils": "No hay papeles que cronometrar: dibuje uno primero.",
      hands: ({ count }) => `Se puede planificar una persona o dos, no ${count}.`,
      "pace-share": "El ritmo de una persona debe ser mayor que 0.",
      "break-backwards": "Una pausa debe acabar después de empezar.",
      "foil-twice": ({ foil }) => `El papel ${foil} está dos veces en el plan.`,
      "foil-bare": ({ foil }) =>
        `Papel ${foil}: no se cubre nada; empiece el producto más cerca del cuero cabelludo o cubra más mechón.`,
      "foil-pace": ({ foil, minutes }) =>
        `Papel ${foil}: el ritmo es ${t.number(minutes)}; introduzca minutos por papel mayores que 0.`,
      "foil-limit": ({ foil }) => `Papel ${foil}: el tiempo máx. del producto debe ser mayor que 0 minutos.`,
      "roots-after-limit": ({ foil, afterMin, limitMin }) =>
        `Papel ${foil}: la raíz iría a los ${t.minutes(afterMin)}, cuando las puntas están en su tiempo máx. de ${t.minutes(limitMin)}. Póngala antes.`,
      "foil-mix": ({ foil, mix }) => `Papel ${foil}: no hay mezcla ${mix}.`,
      "foil-ready": ({ foil, mix }) =>
        `Papel ${foil}: con la mezcla ${mix} no se sabe cuándo puede estar listo.`,
      "no-bowl": ({ foil, mix }) => `Papel ${foil}: ningún bol de la mezcla ${mix} lo atiende.`,
      "bowl-empty": ({ mix }) => `Mezcla ${mix}: un bol debe contener más de 0 g.`,
      "bowl-pot-life": ({ mix }) => `Mezcla ${mix}: su vida útil debe ser mayor que 0 minutos.`,
      "checks-apart": "Entre revisiones debe haber más de 0 minutos.",
      ...goals,
    } satisfies Sentences<TimingProblem>,

    assumed: {
      "lift-by-sheet": ({ fromLevel, toLevel }) =>
        `Del nivel ${t.number(fromLevel)} al ${t.number(toLevel)}: los tiempos son una estimación según la aclaración de la ficha de producto.`,
      "lift-by-strand": ({ fromLevel, toLevel }) =>
        `Del nivel ${t.number(fromLevel)} al ${t.number(toLevel)}: los tiempos son una estimación según la ficha de producto y la prueba de mechón.`,
      "no-levels": ({ low, high }) =>
        `Sin niveles introducidos, los tiempos son los típicos (${t.spread(t.number(low), t.minutes(high))}, una suposición). Revise el mechón.`,
      "lifts-first": ({ hair, low, high, lookMin }) =>
        `${first[hair]} en el ${t.spread(t.number(low * 100), t.percent(high))} de los minutos habituales, una suposición. Primera revisión a los ${t.minutes(lookMin)} de poner el papel.`,
      "roots-wait": ({ foil, byMin, others }) =>
        `Raíz del papel ${foil}${others > 0 ? ` y de ${t.whole(others)} más` : ""}: las manos llegan hasta ${t.minutes(byMin)} más tarde de lo fijado.`,
      "learnt-pace": "Ritmo medido en el sillón.",
      "heat-left-out": ({ why }) => `${say(heat, why)} El calor no entra en el reloj.`,
      "heat-counted": ({ minutes, low, high }) =>
        `Los ${min(minutes)} de calor cuentan ${t.spread(t.number(low, 1), t.number(high, 1))} veces más rápido que sin él: revise en cuanto se quite el calor.`,
      "no-sheet": ({ mix, product, limitMin }) =>
        `Mezcla ${mix}: no hay ficha de «${product}»; se toman ${min(limitMin)} como tiempo máx.`,
    } satisfies Sentences<TimingAssumption>,
    alwaysCheck:
      "Revise pronto y a menudo; retire lo que esté listo. No supere nunca el tiempo máximo del fabricante.",

    heat,

    clashTitle: (count: number) =>
      count === 0
        ? "Sin conflictos en el horario"
        : t.count(count, { one: "# conflicto", other: "# conflictos" }),
    noFix: "Partline no tiene solución para esto: cambie el plan.",
    clashes: {
      "over-run": ({ foil, overMin, limitMin, others: more, piece }) =>
        `El ${names([foil], piece)} pasaría ${min(overMin)} de su máximo de ${min(limitMin)} antes de que todos estén listos${others(more)}.`,
      "under-processed": ({ foil, onMin, needsMin, others: more, piece }) =>
        needsMin === null
          ? `El ${names([foil], piece)} estaría puesto ${min(onMin)} y no se espera que esté listo${others(more)}.`
          : `El ${names([foil], piece)} estaría puesto ${min(onMin)} y se espera que necesite ${min(needsMin)}${others(more)}.`,
      "hairline-ahead": ({ waitMin }) =>
        waitMin === null
          ? "El contorno estaría listo mucho antes que la parte trasera y seguiría puesto hasta el enjuague común."
          : `El contorno estaría listo ${min(waitMin)} antes que la parte trasera y seguiría puesto hasta el enjuague común.`,
      "pot-life": ({ mix, agedMin, potLifeMin }) =>
        `Un bol de la mezcla ${mix} seguiría en uso ${min(agedMin)} después de mezclarlo; su vida útil es de ${min(potLifeMin)}.`,
      booking: ({ chairMin: { low, mid, high }, bookingMin }) =>
        `Se estiman ${t.minutes(mid)} (${t.spread(t.whole(low), t.whole(high))}); hay ${t.minutes(bookingMin)} reservados.`,
    } satisfies Sentences<OfPieces<ConflictCode>>,

    /** On a button; undo calls the change the same. */
    fixes: {
      "each-off": ({ piece }) => `Retirar cada ${word(1, piece)} cuando esté listo`,
      reorder: ({ piece }) => `Colocar los ${word(2, piece)} en otro orden, primero los más lentos`,
      "weaker-early": ({ count, piece }) =>
        t.count(count, {
          one: `Oxidante más suave para el primer ${word(1, piece)}`,
          other: `Oxidante más suave para los primeros # ${word(2, piece)}`,
        }),
      "order-and-strength": ({ count, piece }) =>
        t.count(count, {
          one: `Otro orden, y oxidante más suave para el primer ${word(1, piece)}`,
          other: `Otro orden, y oxidante más suave para los primeros # ${word(2, piece)}`,
        }),
      "closest-together": ({ piece }) =>
        `Llevar todos los ${word(2, piece)} al nivel deseado lo más juntos posible`,
      "fresh-bowl": ({ mixes, foils: at, piece }) =>
        `Mezclar un bol nuevo de ${t.and(mixes)} en ${foils(at, piece)}`,
      "second-colourist": "Trabajar con asistente",
      "no-drying": ({ savesMin }) => `Dejar fuera el secado (${min(savesMin)})`,
      "later-end": ({ bookingMin, byMin }) =>
        `Reservar ${t.minutes(bookingMin)}: acabar ${t.minutes(byMin)} más tarde`,
      "fewer-foils": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `Dejar fuera el ${word(1, piece)} ${numbers(list)}`,
          other: `Dejar fuera # ${word(2, piece)}, repartidos por ambos lados: ${numbers(list)}`,
        }),
      "another-day": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `Dejar el ${word(1, piece)} ${numbers(list)} para otro día`,
          other: `Dejar # ${word(2, piece)} para otro día, repartidos por ambos lados: ${numbers(list)}`,
        }),
    } satisfies Sentences<OfPieces<FixCode>>,

    search: {
      working: "Buscando soluciones",
      stop: "Parar",
      stopped: "Se paró la búsqueda.",
      failed: "La búsqueda de soluciones no empezó.",
      again: "Buscar otra vez",
    },
    closest: ({ nowMin, thenMin }: { nowMin: number; thenMin: number }, piece?: Piece) =>
      `Se espera que los ${word(2, piece)} estén listos a lo largo de ${t.minutes(nowMin)}; en otro orden, o con oxidante más suave primero, a lo largo de ${t.minutes(thenMin)}.`,

    setAside: {
      foils,
      another: ({ foils: list, plan }: { foils: readonly number[]; plan: string }) =>
        `Para otro día: ${foils(list)}. No están en la mezcla, el reloj ni el mapa impreso. Como visita propia pasan a «${plan}»; deshacer los trae de vuelta y deja ese plan donde está.`,
      /** The plan that they go to. */
      planName: (plan: string) => `${plan}, otro día`,
      bringBack: "Recuperarlos para hoy",
      ownVisit: "Planificarlos como visita propia",
      notMoved: (why: string) => `Los papeles se quedan aquí: su propio plan no se guardó. ${why}`,
      moved: (plan: string) => `Los papeles para otro día están ahora en «${plan}», en «Planes».`,
      open: "Abrir ese plan",
      notOpened: (why: string) => `Ese plan no se abrió: ${why}`,
      fresh: (list: readonly number[]) => `Se mezcla un bol nuevo en ${foils(list)}.`,
      usualBowls: "Repartir los boles como siempre",
      damp: "El cabello no se seca en el sillón.",
      dry: "Secarlo de todos modos",
    },
  }
}
