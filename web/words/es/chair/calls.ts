import type { CallCode } from "../../../core/chair/callCode"
import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

export const toners = {
  "root-melt": "Difuminado de raíz",
  mids: "Matizador, medios",
  hairline: "Matizador, contorno",
} satisfies Record<ToneZoneName, string>

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls = (t: Tools) => {
  const who = (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece)
  return {
    due: "Pendiente",
    toners,
    more: (count: number) => `y ${t.whole(count)} más`,
    freshBowl: "toque al mezclar un bol nuevo",
    /** One tap for all foils of a check. */
    carryOn: (foils: readonly number[], piece?: Piece) =>
      `Seguir, ${foilsWords(t, foils, piece).toLocaleLowerCase(t.locale)}`,
    off: (foil: number) => `Retirar ${foil}`,
    rootsOn: (foil: number) => `Raíz ${t.whole(foil)} puesta`,
    checkOne: "Revisar uno",
    rinse: "Enjuagado",

    shown: {
      "bowl-ahead": ({ bowl, mix, inMs }) =>
        `Bol ${bowl} de la mezcla ${mix}: gaste en menos de ${t.clock(inMs)}`,
      "bowl-past": ({ bowl, mix, byMs }) =>
        `Bol ${bowl} de la mezcla ${mix}: ${t.clock(byMs)} pasada su vida útil, mezcle uno nuevo`,
      "heat-ahead": ({ inMs }) => `Calor: apagar en ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Calor: apagar ya, ${t.clock(byMs)} de más`,
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: retirar ya, una revisión dijo parar`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: retirar ya, en el nivel deseado`,
      "planned-ahead": ({ foils, piece, inMs }) =>
        `${who(foils, piece)}: retirada prevista en ${t.clock(inMs)}`,
      "planned-off": ({ foils, piece, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: retirada prevista ahora, revise`
          : `${who(foils, piece)}: retirada prevista hace ${t.clock(byMs)}, revise`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]}: enjuagar en ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) => `${toners[zone]}: revise y enjuague, ${t.clock(byMs)} de más`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]}: tiempo máx. en ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) =>
        `${toners[zone]}: enjuague ya, ${t.clock(byMs)} pasado el tiempo máx.`,
      "limit-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: tiempo máx. en ${t.clock(inMs)}`,
      "limit-past": ({ foils, piece, byMs }) =>
        foils.length === 1
          ? `${who(foils, piece)}: retirar ya, ${t.clock(byMs)} pasado el tiempo máx.`
          : `${who(foils, piece)}: retirar ya, hasta ${t.clock(byMs)} pasado el tiempo máx.`,
      "roots-ahead": ({ foils, piece, mix, inMs }) =>
        `${who(foils, piece)}: raíz en ${t.clock(inMs)}, mezcla ${mix}`,
      "roots-now": ({ foils, piece, mix, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: poner la raíz, mezcla ${mix}`
          : `${who(foils, piece)}: poner la raíz, mezcla ${mix}, ${t.clock(byMs)} de retraso`,
      "check-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: revisar en ${t.clock(inMs)}`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: revisar ya`,
      "check-late": ({ foils, piece, byMs }) =>
        `${who(foils, piece)}: revisar ya, ${t.clock(byMs)} de retraso`,
    } satisfies Sentences<CallCode>,

    spoken: {
      "bowl-ahead": ({ bowl, mix }) => `Bol ${bowl} de la mezcla ${mix}: gástelo pronto.`,
      "bowl-past": ({ bowl, mix }) =>
        `Bol ${bowl} de la mezcla ${mix}: pasada su vida útil, mezcle uno nuevo.`,
      "heat-ahead": "Pronto, apagar el calor.",
      "heat-past": "Apague ya el calor y revise.",
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: retirar ya.`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: retirar ya.`,
      "planned-ahead": ({ foils, piece }) => `${who(foils, piece)}: retirada prevista pronto.`,
      "planned-off": ({ foils, piece }) => `${who(foils, piece)}: retirada prevista ahora.`,
      "toner-ahead": ({ zone }) => `${toners[zone]}: enjuagar pronto.`,
      "toner-off": ({ zone }) => `${toners[zone]}: revise y enjuague.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]}: tiempo máximo pronto.`,
      "toner-limit": ({ zone }) => `${toners[zone]}: enjuague ya.`,
      "limit-ahead": ({ foils, piece }) => `${who(foils, piece)}: tiempo máximo pronto.`,
      "limit-past": ({ foils, piece }) => `${who(foils, piece)}: retirar ya, pasado el tiempo máximo.`,
      "roots-ahead": ({ foils, piece, mix }) => `${who(foils, piece)}: pronto la raíz, mezcla ${mix}.`,
      "roots-now": ({ foils, piece, mix }) => `${who(foils, piece)}: poner la raíz, mezcla ${mix}.`,
      "check-ahead": ({ foils, piece }) => `${who(foils, piece)}: revisar pronto.`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: revisar ya.`,
      "check-late": ({ foils, piece }) => `${who(foils, piece)}: revisar ya.`,
    } satisfies Sentences<CallCode>,
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Foils 1 to 5, 8". */
export const foilsWords = (t: Tools, foils: readonly number[], piece?: Piece) =>
  `${t.capital(pieces(t).word(foils.length, piece))} ${t.runs(foils, (from, to) => `${from} a ${to}`)}`
