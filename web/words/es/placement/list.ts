import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNote } from "../../../core/checks/sectionNotes"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { TakenTwiceCode } from "../../../core/figures/takenTwice"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { PairCode } from "../../../core/placement/pairCode"
import type { PlaceCode } from "../../../core/placement/places"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { type CommonWords, ofSection, theSection } from "../common/common"
import { pieces } from "../common/pieces"

/** The foils in the order they are applied, and the totals of them. */
export const list = (t: Tools, { kinds, place, sectionName, onSide, zones }: CommonWords) => {
  /** `rank` tells sections of one kind at one place apart, from the hairline back. */
  const whatAndWhere = ({ kind, at, rank }: { kind: SectionKind; at: PlaceCode; rank: number | null }) => {
    const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
    return rank === null ? what : `${what}, ${ordinal(rank)}`
  }
  const ordinal = (n: number) => t.ordinal(n, { other: "#.º" })
  return {
    panel: "Papeles",
    title: (foils: number, piece: Piece) => (foils === 0 ? "Papeles" : pieces(t).count(foils, piece)),
    inOrder: "en orden de aplicación",
    label: "Papeles en orden de aplicación",
    empty:
      "Aún no hay papeles. Elija «Velo» y arrastre a lo largo del contorno, tome una técnica o añada uno escribiendo.",
    /** 1st, 2nd, 3rd: a place in the order of application, never a number on the map. */
    ordinal,
    dragHint: "Arrastre para aplicar antes o después",
    whatAndWhere,
    leftOut: ({ name, at, rank }: { name: string; at: PlaceCode; rank: number | null }) => {
      const what = `${name || t.capital(kinds["left-out"])}, ${say<PlaceCode>(place, at)}`
      return rank === null ? what : `${what}, ${ordinal(rank)}`
    },
    mix: (mix: string) => `mezcla ${mix}`,
    noProduct: "sin producto",
    lengthAndDepth: ({ lengthMm, startMm, endMm }: { lengthMm: number; startMm: number; endMm: number }) =>
      startMm === endMm
        ? `${t.mm(lengthMm)} × ${t.mm(startMm, 1)}`
        : `${t.mm(lengthMm)} × ${t.number(startMm, 1)}–${t.mm(endMm, 1)}`,
    /** Which section a section makes a pair with, and on which side that lies. */
    pair: ({ other, side }: PairCode) =>
      side === "centre"
        ? `pareja con ${theSection(other)}`
        : `pareja con ${theSection(other)} ${onSide[side]}`,
    selectSeveral: "Elegir varios",
    all: "Todos",
    copy: "Copiar",
    paste: (sections: number) => `Pegar ${t.whole(sections)}`,
    numberInOrder: "Numerar en este orden",
    selected: (sections: number) =>
      t.count(sections, { one: "# sección seleccionada", other: "# secciones seleccionadas" }),
    copied: (sections: number) =>
      t.count(sections, { one: "# sección copiada", other: "# secciones copiadas" }),
    copyRefused:
      "Las ventanas privadas no guardan, y para copiar hace falta el almacenamiento del navegador.",
    pasteUnreadable: "Lo copiado no se puede leer. Vuelva a copiar las secciones.",
    pasteNothing: "Copie algo primero.",
    dragCancelled: "Se queda donde estaba",

    overlaps: {
      title: "Papeles que se solapan",
      /** Two sections that take the same hair. */
      told: ({
        earlier,
        later,
        areaCm2,
      }: {
        earlier: SectionNameCode
        later: SectionNameCode
        areaCm2: number
      }) => {
        const second = t.capital(theSection(later))
        if (later.code === "left-out")
          return `${second} queda sobre ${t.area(areaCm2)} del cabello ${ofSection(earlier)}.`
        return earlier.code === "left-out"
          ? `${second} toma ${t.area(areaCm2)} del cabello reservado en ${theSection(earlier)}.`
          : `${second} toma ${t.area(areaCm2)} del cabello ${ofSection(earlier)}.`
      },
      reduce: (section: SectionNameCode) => `Reducir ${theSection(section)}`,
      /** How much less the totals are than the rows together. */
      takenTwice,
      inTotals: (code: TakenTwiceCode) => `En los totales, ${takenTwice(code)}.`,
    },

    notes: {
      title: "Mire otra vez",
      told: (told: SectionNote & { section: SectionNameCode }) => {
        const name = t.capital(theSection(told.section))
        if (told.code === "bare-coat")
          return told.part === "ends"
            ? `${name}: la mezcla de la raíz llegaría a ${t.mm(told.toMm)}, en cabello de ${t.cm(told.lengthCm)}. La mezcla ${told.mix} no cubre nada.`
            : `${name}: el producto empieza a ${t.mm(told.startMm)} del cuero cabelludo y la raíz acaba a ${t.mm(told.toMm)}. La mezcla ${told.mix} no cubre nada.`
        return told.code === "deep-slice"
          ? `${name} tiene ${t.mm(told.depthMm)} de grosor: por encima de ${t.mm(told.mostMm)} el interior de un velo macizo queda más oscuro.`
          : `${name}: el producto empezaría a ${t.mm(told.startMm)} del cuero cabelludo y acabaría antes, en cabello de ${t.cm(told.lengthCm)}. No se cubre nada.`
      },
      cure: (code: SectionNote["code"]) =>
        ({
          "deep-slice": "Hacerlo más fino",
          bare: "Empezar más cerca, solo hasta donde haga falta",
          "bare-coat": "Cubrirlo con una sola mezcla",
        })[code],
    },

    totals: {
      title: "Totales por zona",
      zone: "Zona",
      foils: "Papeles",
      hairs: "Cabellos",
      hairToCoat: "A cubrir",
      product: "Producto",
      zones: {
        top: t.capital(zones.top),
        left: t.capital(zones.left),
        right: t.capital(zones.right),
        back: t.capital(zones.back),
      },
      all: "En total",
    },
  }

  function takenTwice({ lowG, highG, pairs, more }: TakenTwiceCode) {
    const named = pairs.map((pair) => t.and(pair.map(nameOf)))
    const others = more > 0 ? [t.count(more, { one: "# par más", other: "# pares más" })] : []
    return `${t.gramsRange({ low: lowG, mid: lowG, high: highG })} menos: cabello tomado dos veces, por ${[...named, ...others].join("; ")}`
  }

  function nameOf(code: SectionNameCode) {
    return "number" in code ? t.whole(code.number) : say<SectionNameCode>(sectionName, code)
  }
}
