import type { EdgeShape } from "../../../geometry/painted/painting"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { FoilKind } from "../../../geometry/section/section"
import type { StepLineCode } from "../../core/teaching/stepLines"
import type { CommonWords } from "../en/common/common"
import type { TeachingWords } from "../en/teaching"
import type { Tools } from "../tools"
import { atLandmark } from "./common/declined"

export const stepTitles = (t: Tools, common: CommonWords): TeachingWords["stepTitles"] => {
  const kinds: Record<FoilKind, (numbers: readonly number[]) => string> = {
    slice: (numbers) => named(numbers, { one: "Slice", other: "Slices" }),
    weave: (numbers) => named(numbers, { one: "Weaving", other: "Weavings" }),
    backcomb: (numbers) => named(numbers, { one: "Toupage", other: "Toupagen" }),
    painted: (numbers) => named(numbers, { one: "Gemalte Partie", other: "Gemalte Partien" }),
  }
  const named = (numbers: readonly number[], { one, other }: { one: string; other: string }) => {
    const list = t.and(numbers.map(t.whole))
    return t.count(numbers.length, { one: `${one} ${list}`, other: `${other} ${list}` })
  }
  return {
    "leave-out": ({ name, isPair, side }) =>
      `${name || "Haar"} auslassen, ${isPair ? common.bothSides : common.onSide[side]}`,
    foils: ({ kind, numbers, isPair, side }) =>
      `${kinds[kind](numbers)}, ${isPair ? common.bothSides : common.onSide[side]}`,
  }
}

const labels: Record<Exclude<StepLineCode["code"], "take">, string> = {
  part: "Scheitel",
  leave: "Lassen",
  hold: "Halten",
  place: "Legen",
  product: "Produkt",
  paint: "Malen",
  "keep-moist": "Luft",
  "other-side": "Dann",
}
const takes = ({ stitching, pushed }: Extract<StepLineCode, { code: "take" }>) =>
  pushed ? "Toupage" : stitching ? "Weben" : "Slice"

/** What a line of a step is about. */
export const stepLabels = (line: StepLineCode) => (line.code === "take" ? takes(line) : labels[line.code])

const isMiddle = (name: LandmarkName) => name === "centre front" || name === "centre nape"

export const stepLines = (t: Tools, common: CommonWords): TeachingWords["stepLines"] => {
  const half = (mm: number) => t.mm(Math.round(mm * 2) / 2, 1)
  const run = ({ run: { from, to, isEven, isAcross } }: Extract<StepLineCode, { code: "part" }>) => {
    const at = (spot: typeof from) => atLandmark({ landmark: spot.landmark, side: "centre" })
    const behind = (spot: typeof from) => t.mm(Math.max(0, spot.behindMm))
    if (!isEven)
      return `Von ${behind(from)} hinter der Haarlinie ${at(from)}${isAcross ? " über die Mitte" : ""} bis ${behind(to)} dahinter ${at(to)}`
    const even = `${t.mm(from.behindMm)} hinter der Haarlinie`
    if (isAcross && from.landmark === to.landmark && isMiddle(from.landmark))
      return `${even}, beidseits der ${common.landmarks[from.landmark]}`
    return from.landmark === to.landmark && !isAcross
      ? `${even}, ${at(from)}`
      : `${even}, ${common.landmarks[from.landmark]} bis ${common.landmarks[to.landmark]}`
  }
  const depth = ({ start, end }: { start: number; end: number }) =>
    start === end ? half(start) : `am Anfang ${half(start)}, am Ende ${half(end)}`
  const rows = (count: number, gapMm: number) =>
    gapMm < 0.5
      ? t.count(count, { one: "# Reihe.", other: "# Reihen hintereinander, ohne Abstand." })
      : t.count(count, {
          one: "# Reihe.",
          other: `# Reihen hintereinander, ${half(gapMm)} dazwischen stehen lassen.`,
        })
  const lies = {
    down: "nach unten hängend",
    up: "nach oben gelegt",
    "toward-face": "zum Gesicht gelegt",
    "away-from-face": "vom Gesicht weg gelegt",
  }
  const sheets: Record<"foil" | "board", (count: number) => string> = {
    foil: (count) => t.count(count, { one: "Eine Folie", other: "# Folien nebeneinander" }),
    board: (count) => t.count(count, { one: "Ein Board", other: "# Boards nebeneinander" }),
  }
  const edges: Record<Exclude<EdgeShape, "straight">, string> = {
    v: "Rand als V",
    w: "Rand als W",
    u: "Rand als U",
    freehand: "freier Rand",
  }
  return {
    part: (line) =>
      [
        `${run(line)}; ${common.direction(line.direction)}, ${t.mm(line.partingMm)} lang.`,
        line.taken === "front"
          ? `Davor nehmen: ${depth(line.depthMm)}.`
          : `Dahinter nehmen: ${depth(line.depthMm)}.`,
        ...(line.gapMm === null ? [] : [rows(line.rows, line.gapMm)]),
      ].join(" "),
    leave: "Wegstecken; kein Produkt.",
    hold: ({ elevationDeg, overDirectionDeg }) =>
      overDirectionDeg === 0
        ? `${t.number(elevationDeg)}° vom Kopf, auf der Basis.`
        : `${t.number(elevationDeg)}° vom Kopf, ${t.number(overDirectionDeg)}° von der Basis überzogen.`,
    take: ({ stitching, isSeenThrough, pushed }) =>
      [
        stitching
          ? `Stiche von ${half(stitching.stitchMm)}, dazwischen ${half(stitching.gapMm)}; der Stiel taucht ${half(stitching.dipMm)} ein.`
          : isSeenThrough
            ? "Alles, so dünn, dass Licht durchscheint."
            : "Alles, flach und gleichmäßig ausgebreitet.",
        ...(pushed
          ? [
              `${t.percent(pushed.share)} in ${t.spread(t.whole(pushed.leastStrokes), t.whole(pushed.mostStrokes))} Strichen zurückschieben: ein Polster von ${half(pushed.cushionMm)}.`,
            ]
          : []),
      ].join(" "),
    place: ({ carrier, count, widthMm, lengthMm, isTight, lie }) =>
      carrier === "open-air"
        ? "Ohne Folie; vom Haar darunter fernhalten."
        : carrier === "film"
          ? "Unter Abdeckfolie; vom Haar darunter fernhalten."
          : `${sheets[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}, darunter, ${isTight ? "eng am" : "nahe am"} Ansatz; ${lies[lie]}.`,
    product: ({ coats, startMm, isPastCushion, fromShare, toShare, faces }) => {
      const from =
        fromShare > 0
          ? `${t.percent(fromShare)} der Länge`
          : isPastCushion
            ? `hinter dem Polster (${half(startMm)} von der Kopfhaut)`
            : `${half(startMm)} von der Kopfhaut`
      const to = toShare === 1 ? "in die Spitzen" : `${t.percent(toShare)} der Länge`
      return `${t.capital(common.coats(coats))}, von ${from} bis ${to}, ${faces === 2 ? "die Strähne beidseitig" : "die Strähne einseitig"}.`
    },
    paint: ({ mix, edge, highShare, lowShare, toShare, featherMm, faces }) =>
      [
        `Die Partie flach auf Hand oder Board legen. Mischung ${mix}, ${faces === 2 ? "beidseitig" : "nur die Oberseite"}:`,
        edge === "straight"
          ? `gerader Rand bei ${t.percent(highShare)} der Länge,`
          : `${edges[edge]} von ${t.percent(highShare)} der Länge bis hinab zu ${t.percent(lowShare)},`,
        toShare === 1 ? "bis in die Spitzen malen." : `bis ${t.percent(toShare)} der Länge malen.`,
        `Die ersten ${half(featherMm)} auslaufen lassen: am Rand dünn, dann satter; darunter voll.`,
      ].join(" "),
    "keep-moist": ({ isUnderFilm }) =>
      isUnderFilm
        ? "Unter Abdeckfolie nach Herstellerangabe; vom Haar darunter fernhalten."
        : "An der Luft; vom Haar darunter fernhalten. Es wirkt nur feucht: nach Herstellerangabe abdecken oder nachfeuchten.",
    "other-side": ({ isEachRow }) =>
      isEachRow
        ? "Nach jeder Reihe dieselbe Reihe auf der anderen Seite, vom selben Punkt aus."
        : "Die andere Seite, vom selben Punkt aus.",
  }
}
