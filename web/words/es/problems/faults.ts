import type { HairlineFault } from "../../../../geometry/scalp/hairlineFault"
import type { HeadMeasureName } from "../../../../geometry/scalp/headSize"
import type { DrawingCode, FieldCode, FileCode } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { documents, fieldNames } from "./fields"

const takeTwinOut = 'quite "twin" para separar la pareja'

export const hairlineFaults: Record<HairlineFault, string> = {
  "crosses-itself": "el contorno se cruzaría a sí mismo: mantenga cada punto entre sus vecinos",
  "over-ear": "el contorno pasaría sobre la oreja: manténgalo alrededor de ella",
  "on-face": "ningún contorno pasa bajo las cejas ni por la mejilla: manténgalo por encima",
  "off-scalp": "eso queda fuera del cuero cabelludo: mantenga el contorno en la cabeza",
  "across-middle": "el contorno de un lado cruzaría el medio de la cabeza: manténgalo en su lado",
}

const measures: Record<HeadMeasureName, string> = {
  lengthMm: "el largo de la cabeza",
  breadthMm: "el ancho de la cabeza",
  heightMm: "el alto de la oreja a lo más alto",
  aroundMm: "el perímetro de la cabeza",
  overMm: "de oreja a oreja por encima",
  frontToNapeMm: "del contorno frontal a la nuca",
}

/** How fields must go together. */
export const fieldFaults = (t: Tools): Sentences<FieldCode> => ({
  "extra-field": ({ field, document }) => `"${field}" no es un campo de ${documents[document]}: quítelo`,
  taken: ({ value, firstPlace }) =>
    `se espera uno propio, pero ${value} ya está en el número ${t.whole(firstPlace)} de la lista`,
  "unknown-mix": ({ known, mix }) =>
    `se espera una de las mezclas de la lista (${known.join(", ")}), se encontró ${mix}`,
  "twin-of-itself": `se espera otra sección, se encontró ella misma; ${takeTwinOut}`,
  "twin-unknown": ({ twin }) => `se espera una sección de este plan, se encontró "${twin}"; ${takeTwinOut}`,
  "twin-of-another": ({ id, twin, named }) =>
    named === null
      ? `se espera una sección que nombre a su vez a "${id}", pero "${twin}" no nombra ninguna; ${takeTwinOut}`
      : `se espera una sección que nombre a su vez a "${id}", pero "${twin}" nombra a "${named}"; ${takeTwinOut}`,
  "pair-of-one": ({ pair, found }) =>
    `se esperan dos secciones que lleven ${pair}, se encontraron ${t.whole(found)}; quite "pair" para poner la sección sola`,
  "pair-not-single": 'se espera "single": true a su lado; quite "pair" para poner la sección sola',
  "nothing-to-coat": ({ startMm, lengthCm }) =>
    `se espera un inicio antes de donde acaba el producto, se encontró a ${t.mm(startMm)} del cuero cabelludo en cabello de ${t.cm(lengthCm)}: empiece más cerca o cubra más mechón`,
  "no-roots": ({ startMm, toMm }) =>
    `se espera más que los ${t.mm(startMm)} donde empieza el producto, se encontró ${t.mm(toMm)}: acabe la raíz más abajo o cubra todo con una sola mezcla`,
  "roots-first-later": ({ afterMin }) =>
    `se espera 0 o las puntas primero, se encontró ${t.minutes(afterMin)} después de las puntas con la raíz primero: ponga primero las puntas o 0 minutos`,
  "no-ends": ({ toMm, lengthCm }) =>
    `se espera un final antes de donde acaba el cabello cubierto, se encontró a ${t.mm(toMm)} del cuero cabelludo en cabello de ${t.cm(lengthCm)}: acabe la raíz más cerca o cubra todo con una sola mezcla`,
  "one-mix-twice": ({ mix }) =>
    `se espera otra mezcla que en el resto del mechón, se encontró ${mix} en ambos: elija otra o cubra todo con una sola mezcla`,
  "landmark-off-middle": ({ landmark }) =>
    `se espera ${landmark} movido en ambos lados y solo hacia arriba o abajo por el medio`,
  "landmark-twice": ({ landmark, firstPlace }) =>
    `se espera cada punto una vez por lado, pero ${landmark} ya se mueve en el número ${t.whole(firstPlace)} de la lista`,
  hairline: ({ fault, side }) =>
    side === "left" ? `izquierda: ${hairlineFaults[fault]}` : `derecha: ${hairlineFaults[fault]}`,
  "head-size": ({ measure, mm, least, greatest }) =>
    `${measures[measure]}, ${t.mm(mm, 1)}, no cuadra con las otras dos medidas: lo usual es de ${t.number(least)} a ${t.mm(greatest)}`,
})

/** Why a text is no document at all. */
export const fileFaults = (t: Tools): Sentences<FileCode> => ({
  "too-large": ({ document, mostMb, foundMb }) =>
    `se espera ${documents[document]} de como mucho ${t.whole(mostMb)} MB, se encontraron ${t.whole(foundMb)} MB: ¿es otro archivo?`,
  empty: ({ document }) => `el archivo está vacío: se espera ${documents[document]} de Partline`,
  "not-json": ({ document }) =>
    `el archivo está cortado o no es ${documents[document]}: vuelva a guardarlo donde se hizo`,
  "no-number": ({ field, word }) => `${fieldNames[field] ?? field}: se espera un número, se encontró ${word}`,
  "another-kind": ({ document, kind }) =>
    `esto no es ${documents[document]} de Partline: se espera "kind": "${kind}"`,
  version: ({ known }) => `se espera un número entero, ${t.whole(known)} por ahora`,
  "newer-version": ({ version, known }) =>
    `este archivo es de la versión ${version} y este Partline lee hasta la ${known}: ábralo con un Partline más nuevo`,
  "more-like-these": ({ count }) =>
    t.count(count, { one: "y # problema más como estos", other: "y # problemas más como estos" }),
  "damaged-link":
    "este enlace se cortó o cambió por el camino: pídalo otra vez, o pida la técnica como archivo",
  "newer-link": "este enlace viene de un Partline más nuevo: ábralo con uno igual de nuevo",
  "too-large-link": "este enlace contiene más de lo que necesita una técnica: pida la técnica como archivo",
  "not-on-shelf": "no existe ese plan en este navegador",
})

/** What makes a line impossible to comb, or to divide the head by. */
export const drawingFaults = (t: Tools): Sentences<DrawingCode> => ({
  "place-outside": "se espera un lugar dentro del contorno, se encontró uno fuera",
  "line-outside": "se espera una línea dentro del contorno, se encontró una que sale de él",
  "line-too-short": ({ leastMm, foundMm }) =>
    `se espera una línea de al menos ${t.mm(leastMm)}, se encontró de ${t.mm(foundMm, 1)}`,
  "line-crosses-itself": "se espera una línea que no se cruce a sí misma",
  "divider-too-short": ({ leastMm, foundMm }) =>
    `se espera una línea de al menos ${t.mm(leastMm)}, se encontró de ${t.mm(foundMm, 1)}: dibújela otra vez`,
  "divider-crosses-itself": "se espera una línea que no se cruce a sí misma: dibújela otra vez",
  "divider-on-another": ({ number }) =>
    `se espera una línea propia, se encontró una que cae sobre la línea de división ${t.whole(number)}: muévala o quítela`,
  "divider-divides-nothing":
    "se espera una línea de borde a borde, se encontró una que no divide nada: prolónguela hasta el contorno o hasta otra línea de división, o quítela",
  "divider-past-edge": ({ pastMm }) =>
    `se espera que la línea acabe en un borde, se encontró ${t.mm(pastMm)} más allá del último: acábela ahí o prolónguela hasta el siguiente`,
  "divider-touches-another":
    "se espera una línea bien separada de las demás, se encontró una que toca otra: muévala o quítela",
  "working-section-too-small": ({ leastCm2, foundCm2 }) =>
    `se esperan al menos ${t.number(leastCm2)} cm² en cada lado, se encontraron ${t.area(foundCm2)}: muévala o quítela`,
})
