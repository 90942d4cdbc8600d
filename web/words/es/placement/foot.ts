import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { SectionKind } from "../../../../geometry/section/section"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { LandmarkCode, Side } from "../../../core/placement/places"
import type { FoilAt } from "../../../core/schedule/foilsAt"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { pieces } from "../common/pieces"

/** What the figures at the foot of the map say. A figure stands before its words. */
export const foot = (t: Tools, { kinds, clientSide, landmark }: CommonWords) => {
  const worn: Record<WornParting["kind"] | "unknown", string> = {
    centre: "con raya al medio",
    side: "con raya al lado",
    zigzag: "con raya en zigzag",
    none: "peinado hacia atrás",
    unknown: "con raya al medio supuesta (sin definir)",
  }
  return {
    empty: "Aún no hay nada dibujado. Aquí saldrán cabellos, cabello a cubrir y gramos.",
    totals: "Totales",
    inHand: ({ kind, number }: { kind: SectionKind; number: number | null }) =>
      number === null ? t.capital(kinds[kind]) : `${t.capital(kinds[kind])} ${t.whole(number)}`,
    depth: (mm: number) => `× ${t.mm(mm, 1)}`,
    behindHairline: (at: LandmarkCode) => `detrás del contorno, ${landmark(at)}`,
    scalp: "cuero cabelludo",
    hairs: "cabellos",
    hairToCoat: "cabello a cubrir",
    product: (range: string) => `producto, ${range}`,
    foils: (foils: number, piece: Piece) => pieces(t).count(foils, piece),
    sections: (sections: number) => t.count(sections, { one: "# sección", other: "# secciones" }),
    more: "más",
    estimates: "Estimaciones. Los boles se planifican con la cifra alta.",
    estimatesLess: (less: string) => `${less}. Los boles se planifican con la cifra alta.`,
    firstToLast: "del primer papel puesto al último retirado",
    minuteByMinute: "Minuto a minuto",
    showHairDown: "Ver cabello suelto",
    backToDrawing: "Volver al dibujo",

    fall: {
      label: "Cabello suelto",
      title: "Muestra dónde se aclara, no el color",
      calculating: "Calculando…",
      side: (side: Exclude<Side, "centre">) => t.capital(clientSide[side]),
      range: (low: number, high: number) => `(de ${t.percent(low)} a ${t.percent(high)})`,
      told: ({ withinCm, heads, kind }: { withinCm: number; heads: number; kind: keyof typeof worn }) =>
        `del cabello visible de frente, a ${t.cm(withinCm)} o menos de la cara, se aclara. ` +
        `Margen: ${t.count(heads, { one: "# cabeza simulada", other: "# cabezas simuladas" })}. ` +
        `Dibujado seco y liso, ${worn[kind]}. Un boceto, no un color.`,
    },

    minutes: {
      label: "El mapa minuto a minuto",
      slider: "Minuto mostrado en el mapa",
      listLabel: (atMin: number) => `Papeles en el minuto ${t.whole(atMin)}`,
      foil: ({
        number,
        piece,
        state,
        onMin,
      }: { number: number; piece?: Piece } & Pick<FoilAt, "state" | "onMin">) => {
        const called = t.capital(pieces(t).names([number], piece))
        if (state === "waiting") return `${called}: aún sin poner`
        return state === "on"
          ? `${called}: puesto hace ${t.minutes(onMin)}`
          : `${called}: retirado, tras ${t.minutes(onMin)}`
      },
      keyLabel: "Qué dicen los tonos: minutos puesto, no un resultado",
      keys: {
        waiting: "sin poner",
        justOn: "recién puesto",
        half: "mitad del tiempo máx.",
        all: "todo",
        off: "retirado",
      },
    },
  }
}
