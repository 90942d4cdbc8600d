import type { EdgeShape } from "../../../geometry/painted/painting"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { FoilKind } from "../../../geometry/section/section"
import type { StepLineCode, StepTitleCode } from "../../core/teaching/stepLines"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import { type CommonWords, ofLandmark, theLandmark } from "./common/common"

export const stepTitles = (t: Tools, common: CommonWords) => {
  const kinds: Record<FoilKind, (numbers: readonly number[]) => string> = {
    slice: (numbers) => named(numbers, { one: "Velo", other: "Velos" }),
    weave: (numbers) => named(numbers, { one: "Tejido", other: "Tejidos" }),
    backcomb: (numbers) => named(numbers, { one: "Cardado", other: "Cardados" }),
    painted: (numbers) => named(numbers, { one: "Panel pintado", other: "Paneles pintados" }),
  }
  const named = (numbers: readonly number[], { one, other }: { one: string; other: string }) => {
    const list = t.and(numbers.map(t.whole))
    return t.count(numbers.length, { one: `${one} ${list}`, other: `${other} ${list}` })
  }
  return {
    "leave-out": ({ name, isPair, side }) =>
      `Dejar fuera: ${name || "cabello"}, ${isPair ? common.bothSides : common.onSide[side]}`,
    foils: ({ kind, numbers, isPair, side }) =>
      `${kinds[kind](numbers)}, ${isPair ? common.bothSides : common.onSide[side]}`,
  } satisfies Sentences<StepTitleCode>
}

const labels: Record<Exclude<StepLineCode["code"], "take">, string> = {
  part: "Raya",
  leave: "Dejar",
  hold: "Sujetar",
  place: "Colocar",
  product: "Aplicar",
  paint: "Pintar",
  "keep-moist": "Aire",
  "other-side": "Luego",
}
const takes = ({ stitching, pushed }: Extract<StepLineCode, { code: "take" }>) =>
  pushed ? "Cardado" : stitching ? "Tejido" : "Velo"

/** What a line of a step is about. */
export const stepLabels = (line: StepLineCode) => (line.code === "take" ? takes(line) : labels[line.code])

const isMiddle = (name: LandmarkName) => name === "centre front" || name === "centre nape"

export const stepLines = (t: Tools, common: CommonWords) => {
  const half = (mm: number) => t.mm(Math.round(mm * 2) / 2, 1)
  const the = (name: LandmarkName) =>
    name === "behind ear" ? common.landmarks[name] : theLandmark(name, common.landmarks[name])
  const spot = ({ landmark, behindMm }: { landmark: LandmarkName; behindMm: number }) => {
    const behind = t.mm(Math.max(0, behindMm))
    return landmark === "behind ear"
      ? `${behind} dentro del contorno, ${common.landmarks[landmark]},`
      : `${behind} detrás ${ofLandmark(landmark, common.landmarks[landmark])}`
  }
  const run = ({ run: { from, to, isEven, isAcross } }: Extract<StepLineCode, { code: "part" }>) => {
    if (!isEven) {
      const start = isAcross ? `${spot(from).replace(/,$/, "")}, pasando por el medio,` : spot(from)
      return `Desde ${start} hasta ${spot(to)}`.replace(/,$/, "")
    }
    const behind = `A ${t.mm(from.behindMm)} detrás del contorno`
    if (from.landmark === to.landmark && isAcross)
      return isMiddle(from.landmark)
        ? `${behind}, a ambos lados ${ofLandmark(from.landmark, common.landmarks[from.landmark])}`
        : `${behind}, de ${common.landmarks[from.landmark]} a ${common.landmarks[to.landmark]}`
    if (from.landmark !== to.landmark)
      return `${behind}, desde ${the(from.landmark)} hasta ${the(to.landmark)}`
    return from.landmark === "behind ear"
      ? `${behind}, ${the(from.landmark)}`
      : `${behind}, en ${the(from.landmark)}`
  }
  const depth = ({ start, end }: { start: number; end: number }) =>
    start === end ? half(start) : `${half(start)} al inicio y ${half(end)} al final,`
  const rows = (count: number, gapMm: number) =>
    gapMm < 0.5
      ? t.count(count, { one: "# fila.", other: "# filas, una detrás de otra, sin espacio entre ellas." })
      : t.count(count, {
          one: "# fila.",
          other: `# filas, una detrás de otra, dejando ${half(gapMm)} entre ellas.`,
        })
  const lies = {
    down: "cuelga hacia abajo",
    up: "se lleva hacia arriba",
    "toward-face": "queda hacia la cara",
    "away-from-face": "queda lejos de la cara",
  }
  const sheets: Record<"foil" | "board", (count: number) => string> = {
    foil: (count) => t.count(count, { one: "Un papel", other: "# papeles lado a lado" }),
    board: (count) => t.count(count, { one: "Una tabla", other: "# tablas lado a lado" }),
  }
  const edges: Record<Exclude<EdgeShape, "straight">, string> = {
    v: "borde en V",
    w: "borde en W",
    u: "borde en U",
    freehand: "borde a mano alzada",
  }
  return {
    part: (line) =>
      [
        `${run(line)}; ${common.direction(line.direction)}, ${t.mm(line.partingMm)} de largo.`,
        line.taken === "front"
          ? `Tome ${depth(line.depthMm)} delante de ella.`
          : `Tome ${depth(line.depthMm)} detrás de ella.`,
        ...(line.gapMm === null ? [] : [rows(line.rows, line.gapMm)]),
      ].join(" "),
    leave: "Apártelo con una pinza; sin producto.",
    hold: ({ elevationDeg, overDirectionDeg }) =>
      overDirectionDeg === 0
        ? `A ${t.number(elevationDeg)}° de la cabeza, sobre su base.`
        : `A ${t.number(elevationDeg)}° de la cabeza, ${t.number(overDirectionDeg)}° fuera de su base.`,
    take: ({ stitching, isSeenThrough, pushed }) =>
      [
        stitching
          ? `Puntadas de ${half(stitching.stitchMm)}, dejando ${half(stitching.gapMm)} entre ellas; la cola entra ${half(stitching.dipMm)}.`
          : isSeenThrough
            ? "Todo, lo bastante fino para ver la luz a través."
            : "Todo, extendido plano y parejo.",
        ...(pushed
          ? [
              `Empuje ${t.percent(pushed.share)} hacia la raíz en ${t.spread(t.whole(pushed.leastStrokes), t.whole(pushed.mostStrokes))} pasadas: un colchón de ${half(pushed.cushionMm)}.`,
            ]
          : []),
      ].join(" "),
    place: ({ carrier, count, widthMm, lengthMm, isTight, lie }) =>
      carrier === "open-air"
        ? "Al aire; manténgalo separado del cabello de debajo."
        : carrier === "film"
          ? "Bajo film; manténgalo separado del cabello de debajo."
          : `${sheets[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}, debajo, ${isTight ? "junto a" : "cerca de"} la raíz; ${lies[lie]}.`,
    product: ({ coats, startMm, isPastCushion, fromShare, toShare, faces }) => {
      const from =
        fromShare > 0
          ? `desde el ${t.percent(fromShare)} del largo`
          : isPastCushion
            ? `desde después del colchón (a ${half(startMm)} del cuero cabelludo)`
            : `desde ${half(startMm)} del cuero cabelludo`
      const to = toShare === 1 ? "las puntas" : `el ${t.percent(toShare)} del largo`
      return `${t.capital(common.coats(coats))}, ${from} hasta ${to}, ${faces === 2 ? "por las dos caras del mechón" : "por una cara del mechón"}.`
    },
    paint: ({ mix, edge, highShare, lowShare, toShare, featherMm, faces }) =>
      [
        `Extienda el panel plano sobre la mano o una tabla. Mezcla ${mix}, ${faces === 2 ? "por las dos caras" : "solo por la cara de arriba"}:`,
        edge === "straight"
          ? `borde recto al ${t.percent(highShare)} del largo,`
          : `${edges[edge]} desde el ${t.percent(highShare)} del largo hasta el ${t.percent(lowShare)},`,
        toShare === 1 ? "pintado hasta las puntas." : `pintado hasta el ${t.percent(toShare)} del largo.`,
        `Difumine los primeros ${half(featherMm)}: poco en el borde, después más; debajo, cubierto del todo.`,
      ].join(" "),
    "keep-moist": ({ isUnderFilm }) =>
      isUnderFilm
        ? "Bajo film, como indica el fabricante; manténgalo separado del cabello de debajo."
        : "Al aire; manténgalo separado del cabello de debajo. Solo actúa húmedo: cubra con film o vuelva a humedecer como indica el fabricante.",
    "other-side": ({ isEachRow }) =>
      isEachRow
        ? "Después de cada fila, la misma fila en el otro lado, desde el mismo punto."
        : "El otro lado, desde el mismo punto.",
  } satisfies Sentences<StepLineCode>
}
