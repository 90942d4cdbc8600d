import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { Direction, DirectionName } from "../../../../geometry/parting/direction"
import type { Plan } from "../../../core/document/schema"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Names } from "../../en/sheets/names"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** The placement and formula map. */
export const map = (t: Tools, common: Names) => ({
  about: "Mapa de colocación y fórmula",
  aboutMirror: "Mapa de colocación y fórmula, frente como en el espejo",
  /** The usual parting and the crown swirl, where either is known. */
  worn,

  /** In the head, as large as the numbers of the foils. */
  alerts: { stop: "SIN VISTO BUENO: NO MEZCLAR", notAsked: "SIN VISTO BUENO: salud sin preguntar" },

  /** To be filled in by hand; the rule to write on is drawn. */
  tests: { strand: "Prueba de mechón hecha:", patch: "Prueba de alergia sin reacción el:" },

  bowls,
  toner: { title: "Matizador, tras el enjuague" },
  working: working(t, common),
  painted: {
    title: "Paneles pintados, escala 1 : 10",
    of: ({ widthMm, lengthMm, share }: { widthMm: number; lengthMm: number; share: number }) =>
      `${t.mm(widthMm)} × ${t.mm(lengthMm)}, ${t.percent(share)} pintado`,
    key: "Desde el borde: suave, medio, lleno.",
  },
  ruler: ruler(t, common),
  table: table(t),
  clock: clock(t),
})

const bowls = {
  title: "Boles, con la cifra alta",
  doneTitle: "Boles, como se mezclaron",
}

const working = (t: Tools, common: Names) => ({
  title: "Secciones de la cabeza, en orden",
  row: ({
    name,
    foils,
    productG,
    placeMin,
  }: {
    name: string
    foils: readonly number[]
    productG: Range
    placeMin: Range | null
  }) =>
    [
      `${name}: ${common.foils(foils)}`,
      t.gramsRange(productG),
      ...(placeMin ? [`${t.spread(t.whole(placeMin.low), t.whole(placeMin.high))} min`] : []),
    ].join("; "),
  noFoils: (names: readonly string[]) => `${names.join(", ")}: sin papeles`,
  crossing: (names: readonly string[]) => `En dos secciones: ${t.and(names)}`,
})

const ruler = (t: Tools, common: Names) => ({
  title: "Grosores, tamaño real",
  check: ["50 mm de largo; si no,", "imprima a tamaño real"],
  depth: (mm: number) => t.mm(mm, 1),
  foils: common.foils,
  foilCount: common.foilCount,
  starts: "Inicio del producto, tamaño real",
  /** Where lightened hair may begin, off the scalp. */
  notPast: ({ low, high }: { low: number; high: number }) =>
    `decolorado desde ${t.spread(t.whole(low), t.mm(high))}: sin producto tras la línea`,
  stitches: "Puntada/espacio, mm, tamaño real",
  stitch: ({ stitchMm, gapMm, dipMm }: { stitchMm: number; gapMm: number; dipMm: number }) =>
    `${half(t, stitchMm)}/${half(t, gapMm)}, prof. ${half(t, dipMm)}`,
  scale: "50 mm en la cabeza, en cada vista",
})

/** Halves are kept, since a slice is one to three millimetres deep. */
const half = (t: Tools, mm: number) => t.number(Math.round(mm * 2) / 2, 1)

const ways: Record<DirectionName, string> = {
  "parallel to hairline": "paralela",
  horizontal: "horizontal",
  "diagonal forward": "diag. adelante",
  "diagonal back": "diag. atrás",
  vertical: "vertical",
}

const table = (t: Tools) => ({
  /** What stands over each column, in one line or two. */
  heads: {
    order: ["Ord."],
    number: ["N.º"],
    side: ["Lado"],
    kind: ["Tipo"],
    foils: ["Pap."],
    lengthMm: ["Largo", "mm"],
    depthMm: ["Gros.", "mm"],
    direction: ["Raya"],
    start: ["Desde", "mm"],
    hairG: ["Cab.", "g"],
    lowG: ["mín."],
    midG: ["med."],
    highG: ["máx."],
    mix: ["Mez."],
    on: ["Inicio"],
    off: ["Fin"],
  } satisfies Record<string, readonly string[]>,
  product: "Producto, g",
  sides: { left: "izq.", right: "der.", centre: "centro" },
  kinds: { slice: "Velo", weave: "Tejido", backcomb: "Cardado", painted: "Pintado" },
  half: (mm: number) => half(t, mm),
  /** The direction in the fewest words: what follows the hairline is parallel. */
  direction: (direction: Direction) =>
    direction.name === "parallel to hairline"
      ? ways[direction.name]
      : `${ways[direction.name]} ${t.whole(direction.degrees)}°`,
  /** Where product starts, mm off the scalp, and to where along the strand. */
  start: (startMm: number, { from, to }: { from: number; to: number }) => {
    const start = from > 0 ? t.percent(from) : half(t, startMm)
    return to < 1 ? `${start} a ${t.percent(to)}` : start
  },
  carriers: { board: "tabla", "open-air": "aire", film: "film" },
  leftOut: (name: string) => (name ? `Fuera: ${name}` : "Dejado fuera"),
  total: ({ foils, piece, areaCm2, hairs }: { foils: number; piece: Piece; areaCm2: number; hairs: Range }) =>
    `${pieces(t).count(foils, piece)}, ${t.area(areaCm2)} de cuero cabelludo, ${t.spread(t.hairs(hairs.low), t.hairs(hairs.high))} cabellos`,
  takenTwice: (less: string) => `${less}; con trama cruzada en el mapa.`,
  arrows:
    "El producto va desde su inicio (mm desde el cuero cabelludo) hasta las puntas, salvo que la fila diga otra cosa. Flechas: en el mapa, cómo cae un papel; aquí, cómo baja la raya vista desde ese lado.",
})

const clock = (t: Tools) => ({
  title: "Reloj, minutos desde la primera raya",
  heads: { number: "N.º", on: "Ini.", ready: "Listo", off: "Máx." },
  key: "Barra: tiempo puesto, tramada como su mezcla. Blanco: puede estar listo. Trazo grueso: tiempo máximo. Puntos: una revisión. Triángulo: mezclar ese bol. Previsto, no prometido: revise y retire lo que esté listo.",
  rest: ({
    who,
    fromMin,
    toMin,
  }: {
    who: "all" | "colourist" | "assistant"
    fromMin: number
    toMin: number
  }) => `${resting[who]} del minuto ${t.whole(fromMin)} al ${t.whole(toMin)}.`,
  heat: ({ fromMin, toMin }: { fromMin: number; toMin: number }) =>
    `Calor del minuto ${t.whole(fromMin)} al ${t.whole(toMin)}: luego apagar, revisar, enfriar.`,
  readyOpen: (low: number) => `${t.whole(low)}–?`,
})

const resting = { all: "Pausa", colourist: "Pausa de colorista", assistant: "Pausa de asistente" }

const worn = ({ wornParting, whorl }: Pick<Plan["head"], "wornParting" | "whorl">) =>
  [
    ...(wornParting
      ? [wornParting.kind === "side" ? sides[wornParting.side] : partings[wornParting.kind]]
      : []),
    ...(whorl ? [whorls[whorl.turns]] : []),
  ].join(", ")

const partings = { centre: "raya al medio", zigzag: "raya en zigzag", none: "sin raya habitual" }
const sides = { left: "raya a la izquierda", right: "raya a la derecha" }
const whorls = {
  clockwise: "remolino en sentido horario",
  anticlockwise: "remolino en sentido antihorario",
  none: "sin remolino",
}
