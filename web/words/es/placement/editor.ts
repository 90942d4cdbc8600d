import type { SectionKind } from "../../../../geometry/section/section"
import type { DepthWord, RootWord, StitchWord } from "../../../../presets/placement/foils"
import type { PairCode } from "../../../core/placement/pairCode"
import type { PlaceCode, Side } from "../../../core/placement/places"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { type CommonWords, theSection } from "../common/common"

/** Every way to change the sections in hand without a pointer, and adding one by typing. */
export const editor = (t: Tools, names: CommonWords) => {
  const { kinds, place, onSide, sides } = names
  const depths: Record<DepthWord, string> = {
    micro: "Micro",
    fine: "Fino",
    standard: "Normal",
    heavy: "Grueso",
  }
  const stitches: Record<StitchWord, string> = { fine: "Fina", medium: "Media", chunky: "Gruesa" }
  const roots: Record<RootWord, string> = {
    tight: "Pegado",
    standard: "Normal",
    soft: "Suave",
    regrowth: "Solo crecimiento",
  }
  return {
    several: (sections: number) =>
      t.count(sections, { one: "# sección seleccionada", other: "# secciones seleccionadas" }),
    title: ({
      kind,
      at,
      number,
      name,
    }: {
      kind: SectionKind
      at: PlaceCode
      number: number | null
      name: string
    }) => {
      const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
      const named = name ? `${name}: ${what}` : what
      return number === null ? named : `${t.whole(number)} ${named}`
    },
    close: "Cerrar",
    kind: "Tipo de sección",
    figures: {
      direction: "Dirección",
      parting: "Raya",
      scalp: "Cuero cabelludo",
      share: "Parte del cabello tomada",
      hairs: "Cabellos",
      strandLength: "Largo del mechón",
      hair: "Cabello",
      hairToCoat: "Cabello a cubrir",
      foils: "Papeles",
      product: "Producto",
    },
    name: "Nombre",
    /** Which it makes a pair with. */
    pair: ({ other, side }: PairCode) =>
      side === "centre"
        ? `Pareja con ${theSection(other)}: los cambios valen para los dos.`
        : `Pareja con ${theSection(other)} ${onSide[side]}: los cambios valen para los dos.`,
    breakPair: "Separar la pareja",
    wide: (foils: number) =>
      t.count(foils, {
        one: "Más ancha que su papel: # papel.",
        other: "Más ancha que su papel: # papeles lado a lado.",
      }),
    split: (foils: number) => t.count(foils, { one: "Dividir en # papel", other: "Dividir en # papeles" }),

    behindHairline: "Detrás del contorno",
    fromCentreFront: (side: Exclude<Side, "centre">) => `Del centro frontal, ${sides[side]}`,
    length: "Largo",
    angle: "Ángulo",
    runs: "Sentido",

    taken: "Cabello tomado",
    takenFrom: { front: "Delante", behind: "Detrás de la raya" },
    depthOfAll: "Grosor",
    depthAtStart: "Grosor al inicio",
    depthAtEnd: "Grosor al final",
    depths,
    depth: (word: DepthWord, mm: number) => `${depths[word]} ${t.mm(mm, 1)}`,
    stitch: "Puntada",
    stitches,
    stitchOf: (word: StitchWord, mm: number) => `${stitches[word]} ${t.mm(mm, 1)}`,
    productStarts: "Inicio del producto",
    roots,
    root: (word: RootWord, mm: number) =>
      word === "regrowth" ? roots[word] : `${roots[word]} ${t.mm(mm, 1)}`,

    all: "Todos los ajustes",
    stitchMm: "Puntada",
    gapMm: "Espacio",
    dipMm: "Profundidad (cola del peine)",
    backcombedFrom: "Cardado desde",
    bases: { slice: "Un velo", weave: "Un tejido" },
    pushedShare: "Parte cardada",
    cushion: "Colchón",
    note: "Nota",
    mapNumber: "Número en el mapa",
    rootDistance: "Inicio desde el cuero cabelludo",
    coatedFrom: "Cubierto desde",
    coatedTo: "Cubierto hasta",
    coat: "Cubrir",
    faces: { both: "Ambas caras", one: "Solo superficie (pintado)" },
    carrier: "Envuelto en",
    carrierWidth: "Ancho del papel",
    carrierLength: "Largo del papel",
    elevation: "Elevación",
    overDirection: "Sobredirección",
    foilLie: "Dirección del papel",
    mix: "Mezcla",
    rootsMix: {
      legend: "Mezcla en la raíz",
      none: "Como el resto",
      onlyOne: "Una segunda mezcla para la raíz se añade en Fórmula.",
      to: "Fin de la raíz, desde el cuero",
      first: "Va primero",
      firsts: { ends: "Puntas", roots: "Raíz" },
      after: "La raíz va más tarde",
      afterNote:
        "0: las dos en una sola vez. Si no, se vuelve a abrir para la raíz, que tiene su propio tiempo y se toca aparte.",
    },

    typing: {
      title: "Añadir escribiendo",
      kind: "Qué",
      side: "Lado",
      from: "Desde",
      to: "Hasta",
      startsBehind: "Detrás del contorno donde empieza",
      drift: "Va hacia atrás",
      add: (kind: SectionKind) => `Añadir ${kinds[kind]}`,
      refused: "Elija dos lugares más separados.",
    },
  }
}
