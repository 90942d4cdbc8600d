import type { EdgeShape } from "../../../geometry/painted/painting"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { FoilKind } from "../../../geometry/section/section"
import type { StepLineCode, StepTitleCode } from "../../core/teaching/stepLines"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import { articles } from "./common/articles"
import type { CommonWords } from "./common/common"

export const stepTitles = (t: Tools, common: CommonWords) => {
  const kinds: Record<FoilKind, (numbers: readonly number[]) => string> = {
    slice: (numbers) => named(numbers, { one: "Tranche", other: "Tranches" }),
    weave: (numbers) => named(numbers, { one: "Tricotage", other: "Tricotages" }),
    backcomb: (numbers) => named(numbers, { one: "Crêpage", other: "Crêpages" }),
    painted: (numbers) => named(numbers, { one: "Mèche peinte", other: "Mèches peintes" }),
  }
  const named = (numbers: readonly number[], { one, other }: { one: string; other: string }) => {
    const list = t.and(numbers.map(t.whole))
    return t.count(numbers.length, { one: `${one} ${list}`, other: `${other} ${list}` })
  }
  return {
    "leave-out": ({ name, isPair, side }) =>
      `Laisser : ${name || "cheveux"}, ${isPair ? common.bothSides : common.onSide[side]}`,
    foils: ({ kind, numbers, isPair, side }) =>
      `${kinds[kind](numbers)}, ${isPair ? common.bothSides : common.onSide[side]}`,
  } satisfies Sentences<StepTitleCode>
}

const labels: Record<Exclude<StepLineCode["code"], "take">, string> = {
  part: "Séparer",
  leave: "Laisser",
  hold: "Tenir",
  place: "Placer",
  product: "Produit",
  paint: "Peindre",
  "keep-moist": "Air",
  "other-side": "Puis",
}
const takes = ({ stitching, pushed }: Extract<StepLineCode, { code: "take" }>) =>
  pushed ? "Crêper" : stitching ? "Tricoter" : "Tranche"

/** What a line of a step is about. */
export const stepLabels = (line: StepLineCode) => (line.code === "take" ? takes(line) : labels[line.code])

export const stepLines = (t: Tools, common: CommonWords) => {
  const { fromOneToOther, ofLandmark, toLandmark, untilLandmark } = articles(t, common)
  const half = (mm: number) => t.mm(Math.round(mm * 2) / 2, 1)
  const spot = ({ landmark, behindMm }: { landmark: LandmarkName; behindMm: number }) =>
    landmark === "behind ear"
      ? `${t.mm(Math.max(0, behindMm))} derrière la lisière, derrière l’oreille`
      : `${t.mm(Math.max(0, behindMm))} derrière ${theLandmark[landmark]} ${common.landmarks[landmark]}`
  const run = ({ run: { from, to, isEven, isAcross } }: Extract<StepLineCode, { code: "part" }>) => {
    if (!isEven) return `De ${spot(from)}${isAcross ? ", en passant par le milieu," : ""} à ${spot(to)}`
    const behind = `À ${t.mm(from.behindMm)} derrière la lisière`
    if (isAcross && from.landmark === to.landmark) return `${behind}, ${fromOneToOther(from.landmark)}`
    return from.landmark === to.landmark
      ? `${behind}, ${toLandmark(from.landmark)}`
      : `${behind}, ${ofLandmark(from.landmark)} ${untilLandmark(to.landmark)}`
  }
  const depth = ({ start, end }: { start: number; end: number }) =>
    start === end ? half(start) : `${half(start)} au début, ${half(end)} à la fin,`
  const rows = (count: number, gapMm: number) =>
    gapMm < 0.5
      ? t.count(count, { one: "# rang.", other: "# rangs, l’un derrière l’autre, sans écart." })
      : t.count(count, {
          one: "# rang.",
          other: `# rangs, l’un derrière l’autre, en laissant ${half(gapMm)} entre eux.`,
        })
  const lies = {
    down: "laisser pendre",
    up: "coucher vers le haut",
    "toward-face": "diriger vers le visage",
    "away-from-face": "diriger vers l’arrière",
  }
  const sheets: Record<"foil" | "board", (count: number) => string> = {
    foil: (count) => t.count(count, { one: "Une papillote", other: "# papillotes côte à côte" }),
    board: (count) => t.count(count, { one: "Une planche", other: "# planches côte à côte" }),
  }
  const edges: Record<Exclude<EdgeShape, "straight">, string> = {
    v: "bord en V",
    w: "bord en W",
    u: "bord en U",
    freehand: "bord à main levée",
  }
  return {
    part: (line) =>
      [
        `${run(line)} ; ${common.direction(line.direction)}, ${t.mm(line.partingMm)} de long.`,
        line.taken === "front"
          ? `Prendre ${depth(line.depthMm)} devant.`
          : `Prendre ${depth(line.depthMm)} derrière.`,
        ...(line.gapMm === null ? [] : [rows(line.rows, line.gapMm)]),
      ].join(" "),
    leave: "Pincer à l’écart ; pas de produit.",
    hold: ({ elevationDeg, overDirectionDeg }) =>
      overDirectionDeg === 0
        ? `${t.number(elevationDeg)}° de la tête, sur sa base.`
        : `${t.number(elevationDeg)}° de la tête, ${t.number(overDirectionDeg)}° hors de sa base.`,
    take: ({ stitching, isSeenThrough, pushed }) =>
      [
        stitching
          ? `Mailles de ${half(stitching.stitchMm)}, ${half(stitching.gapMm)} laissés entre elles ; la queue du peigne plonge de ${half(stitching.dipMm)}.`
          : isSeenThrough
            ? "Le tout, assez fin pour voir la lumière à travers."
            : "Le tout, étalé à plat et régulier.",
        ...(pushed
          ? [
              `Repousser ${t.percent(pushed.share)} en ${t.spread(t.whole(pushed.leastStrokes), t.whole(pushed.mostStrokes))} coups : un coussin de ${half(pushed.cushionMm)}.`,
            ]
          : []),
      ].join(" "),
    place: ({ carrier, count, widthMm, lengthMm, isTight, lie }) =>
      carrier === "open-air"
        ? "À l’air libre ; tenir à l’écart des cheveux dessous."
        : carrier === "film"
          ? "Sous film ; tenir à l’écart des cheveux dessous."
          : `${sheets[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}, dessous, ${isTight ? "contre" : "près de"} la racine ; ${lies[lie]}.`,
    product: ({ coats, startMm, isPastCushion, fromShare, toShare, faces }) => {
      const from =
        fromShare > 0
          ? `de ${t.percent(fromShare)} de la longueur`
          : isPastCushion
            ? `après le coussin (${half(startMm)} du cuir chevelu)`
            : `à ${half(startMm)} du cuir chevelu`
      const to = toShare === 1 ? "jusqu’aux pointes" : `jusqu’à ${t.percent(toShare)} de la longueur`
      return `${t.capital(common.coats(coats))}, ${from} ${to}, ${faces === 2 ? "les deux faces de la mèche" : "une face de la mèche"}.`
    },
    paint: ({ mix, edge, highShare, lowShare, toShare, featherMm, faces }) =>
      [
        `Poser la mèche à plat sur la main ou une planche. Mélange ${mix}, ${faces === 2 ? "les deux faces" : "la face du dessus seule"} :`,
        edge === "straight"
          ? `bord droit à ${t.percent(highShare)} de la longueur,`
          : `${edges[edge]} de ${t.percent(highShare)} de la longueur jusqu’à ${t.percent(lowShare)},`,
        toShare === 1 ? "peint jusqu’aux pointes." : `peint jusqu’à ${t.percent(toShare)} de la longueur.`,
        `Estomper les premiers ${half(featherMm)} : peu au bord, puis plus ; dessous, couche pleine.`,
      ].join(" "),
    "keep-moist": ({ isUnderFilm }) =>
      isUnderFilm
        ? "Sous film selon le fabricant ; tenir à l’écart des cheveux dessous."
        : "À l’air libre ; tenir à l’écart des cheveux dessous. Il n’agit qu’humide : couvrir de film ou réhumidifier selon le fabricant.",
    "other-side": ({ isEachRow }) =>
      isEachRow
        ? "Après chaque rang, le même de l’autre côté, à partir du même repère."
        : "L’autre côté, à partir du même repère.",
  } satisfies Sentences<StepLineCode>
}

const theLandmark: Record<Exclude<LandmarkName, "behind ear">, string> = {
  "centre front": "le",
  recession: "le",
  temple: "la",
  sideburn: "la",
  "ear top": "le",
  "nape corner": "le",
  "centre nape": "le",
}
