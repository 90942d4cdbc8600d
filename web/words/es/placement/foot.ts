import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { SectionKind } from "../../../../geometry/section/section"
import type { WornFront } from "../../../../geometry/strands/gather"
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
  const fronts: Record<WornFront, string> = {
    cheek: "sobre la mejilla",
    tucked: "tras la oreja",
    tied: "recogido",
  }
  const toned = {
    cool: "matizado frío",
    neutral: "matizado neutro",
    warm: "matizado cálido",
    none: "antes del matizador",
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
    firstToLast: (piece: Piece): string =>
      ({
        foil: "del primer papel puesto al último retirado",
        panel: "del primer panel puesto al último retirado",
        both: "del primero puesto al último retirado",
      })[piece],
    minuteByMinute: "Minuto a minuto",
    showHairDown: "Ver cabello suelto",
    backToDrawing: "Volver al dibujo",

    fall: {
      label: "Cabello suelto",
      title: "Un boceto a partir de cifras de pigmento",
      calculating: "Calculando…",
      side: (side: Exclude<Side, "centre">) => t.capital(clientSide[side]),
      range: (low: number, high: number) => `(de ${t.percent(low)} a ${t.percent(high)})`,
      told: ({
        withinCm,
        heads,
        kind,
        front,
      }: {
        withinCm: number
        heads: number
        kind: keyof typeof worn
        front: WornFront
      }) =>
        `del cabello visible de frente, a ${t.cm(withinCm)} o menos de la cara, se aclara. ` +
        `Margen: ${t.count(heads, { one: "# cabeza simulada", other: "# cabezas simuladas" })}. ` +
        `Dibujado seco y liso, ${worn[kind]}, delante ${fronts[front]}, el mismo día. El color lo muestra la prueba de mechón.`,
      /** What is drawn, and how far its colour may be out. */
      drawn: ({ now, aimed, finish }: { now: number; aimed: number; finish: keyof typeof toned | null }) =>
        `Dibujado del nivel ${t.number(now)} al ${t.number(aimed)}, ${toned[finish ?? "none"]}; las muestras van de un nivel más oscuro a uno más claro.`,
      nowAssumed: (level: number) => `Nivel actual sin indicar: dibujado como ${t.number(level)}.`,
      aimedAssumed: (level: number) => `Nivel deseado sin indicar: dibujado como ${t.number(level)}.`,
      front: "Delante",
      fronts,
      swatches: "Color, como margen",
      weeks: "Semanas después",
      weeksOn: ({ weeks, lowMm, highMm }: { weeks: number; lowMm: number; highMm: number }) =>
        weeks === 0
          ? "el mismo día"
          : `${t.count(weeks, { one: "# semana", other: "# semanas" })}: raíz crecida ${t.spread(t.whole(lowMm), t.whole(highMm))} mm (margen)`,
      withToner: "Con matizador",
      showToClient: "Mostrar a su cliente",
      backToFigures: "Volver a las cifras",
      clientSentence: "Un boceto de dónde cae la luz. El color lo muestra la prueba de mechón.",
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
