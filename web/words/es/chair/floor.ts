import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { foilsWords } from "./calls"

/** The service while it goes on: what is next, what is on, and what is done with each foil. */
export const floor = (t: Tools) => ({
  next: "Siguiente",
  nextFoil: (piece: Piece) => (piece === "panel" ? "Panel siguiente" : "Papel siguiente"),
  allOn: (piece: Piece): string =>
    ({
      foil: "Todos los papeles, puestos.",
      panel: "Todos los paneles, puestos.",
      both: "Todos los papeles y paneles, puestos.",
    })[piece],
  what: ({ kind, place, foils }: { kind: string; place: string; foils: number }) =>
    foils === 1
      ? `${t.capital(kind)}, ${place}`
      : `${t.capital(kind)} en ${t.whole(foils)} papeles, ${place}`,
  mix: (letter: string) => `mezcla ${letter}`,
  now: "Ahora",
  atMinute: (min: number) => `En el minuto ${t.whole(min)}`,
  isOn: (foil: number, piece?: Piece) => `${t.capital(pieces(t).names([foil], piece))} puesto`,
  /** Who placed it, by name, else by what they are. */
  by: (who: string) => `por ${who}`,
  colourist: "colorista",
  assistant: "asistente",
  whoTaps: "Quién toca",
  wentOnEarlier: buttons.wentOnEarlier,
  /** A lane: who works in it, and on which side. */
  lane: (who: string) => t.capital(who),
  laneDone: "Este lado, todo puesto.",
  /** Foils of a lane that may be taken before their turn. */
  otherFoil: (piece: Piece) =>
    ({ foil: "Antes otro papel", panel: "Antes otro panel", both: "Antes otro" })[piece],

  onNow: "Puestos ahora",
  foilsOn: (piece: Piece): string =>
    ({ foil: "Papeles puestos", panel: "Paneles puestos", both: "Papeles y paneles puestos" })[piece],
  noneOn: (piece: Piece): string =>
    ({ foil: "Ningún papel puesto.", panel: "Ningún panel puesto.", both: "Nada puesto." })[piece],
  foil: (piece: Piece) => t.capital(pieces(t).word(1, piece)),
  foilName: (foil: number, piece?: Piece) => t.capital(pieces(t).names([foil], piece)),
  foilNames: (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece),
  minutes: "min",
  /** Time left to the planned minute, and past it: it never slides ahead. */
  offIn: (ms: number) => `retirada en ${t.clock(ms)}`,
  offOver: (ms: number) => `retirada hace ${t.clock(ms)}`,
  offStop: "retirar ya",
  rootsToCome: "falta la raíz",
  rootsOn: "Raíz puesta",
  rootsWentOnEarlier: "La raíz se puso antes",
  offNow: (limitMin: number) => `máx. ${t.whole(limitMin)}: retirar ya`,
  countedFromEarliest: "cuenta desde lo más temprano",

  tapFoil: (piece: Piece): string =>
    ({
      foil: "Toque un papel: revisado, retirado, reaplicado.",
      panel: "Toque un panel: revisado, retirado, reaplicado.",
      both: "Toque un papel o panel: revisado, retirado, reaplicado.",
    })[piece],
  burning: "Arde",
  checked: "Revisado",
  off: buttons.off,
  reCoated: "Reaplicado",

  mixNow: (mix: string) => `Mezclar ${mix} ahora`,
  /** The minute is written apart: it changes by itself. */
  bowlFor: ({ bowl, of }: { bowl: number; of: number }) => `bol ${bowl} de ${of}, para el minuto`,
  rinseNow: buttons.rinseNow,
  allOfThem: (count: number) => t.count(count, { one: "el # puesto", other: "los # puestos" }),
  notReady: (foils: readonly number[], piece?: Piece) =>
    t.count(foils.length, {
      one: `${foilsWords(t, foils, piece)}: aún no llega a su tiempo previsto. ¿Enjuagar igualmente?`,
      other: `${foilsWords(t, foils, piece)}: aún no llegan a su tiempo previsto. ¿Enjuagar igualmente?`,
    }),
  rinseAll: "Enjuagar todos",
  notYet: "Aún no",
  end: "Terminar el servicio",
  tonerOn: buttons.tonerOn,
  tonerChecked: "Revisado",
  tonerOff: buttons.tonerOff,
  tonerPlan: ({ product, minutes }: { product: string | null; minutes: number }) =>
    product === null ? `${t.minutes(minutes)}; elija el matizador` : `${product}, ${t.minutes(minutes)}`,
  tonerTime: ({ onMs, plannedMin }: { onMs: number; plannedMin: number }) =>
    `${t.clock(onMs)} de ${t.minutes(plannedMin)}`,
  tonerDone: "enjuagado",
  skipToners: "Sin matizador",
  after: "Tras el enjuague",
  heatOn: buttons.heatOn,
  heatFor: (minutes: number) => `${t.minutes(minutes)}, luego revisar`,
  heatOff: "Calor quitado",
  thenCheck: "luego revisar y dejar enfriar",

  outlook: ({ lastOnMin, rinseMin }: { lastOnMin: number; rinseMin: number }, piece: Piece) =>
    `Al ritmo actual: ${{ foil: "último papel puesto", panel: "último panel puesto", both: "último puesto" }[piece]} en el minuto ${t.whole(lastOnMin)}, todos retirados en el minuto ${t.whole(rinseMin)}.`,

  again: "Empezar otro servicio de este plan",
  weigh: {
    title: "Pesar lo que queda",
    bowl: ({ bowl, mix }: { bowl: number; mix: string }) => `Bol ${bowl}, mezcla ${mix}`,
    made: ({ lightenerG, developerG }: { lightenerG: number; developerG: number }) =>
      `hecho ${t.gramsNumber(lightenerG)} + ${t.grams(developerG)}`,
    left: "Queda",
    used: (grams: number) => `${t.grams(grams)} usados`,
  },
  nextVisit: {
    title: "Próxima visita",
    plan: "Planificar la próxima visita",
    when: ({ from, to }: { from: string; to: string }) => `Entre el ${t.date(from)} y el ${t.date(to)}.`,
    test: (day: string) => `Prueba de alergia aplicada como tarde el ${t.date(day)}.`,
  },

  /** One check: what was seen. */
  check: {
    seen: (name: string) => `${name}: lo que vio`,
    level: (name: string) => `${name}: nivel visto`,
    darker: "Medio nivel más oscuro",
    lighter: "Medio nivel más claro",
    stretch: "Elasticidad",
    stretches: { ok: "Bien", soft: "Flojo", stop: "Parar" },
    scalp: "Cuero cabelludo",
    comforts: { ok: "Bien", warm: "Calor", burning: "Arde" },
    product: "Producto",
    moist: "Húmedo",
    dry: "Seco",
    save: "Guardar",
    notNow: "Ahora no",
  },
})
