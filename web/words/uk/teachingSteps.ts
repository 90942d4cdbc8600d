import type { EdgeShape } from "../../../geometry/painted/painting"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { FoilKind } from "../../../geometry/section/section"
import type { StepLineCode } from "../../core/teaching/stepLines"
import type { CommonWords } from "../en/common/common"
import type { TeachingWords } from "../en/teaching"
import type { Tools } from "../tools"
import { landmarkName } from "./common/landmarks"

export const stepTitles = (t: Tools, common: CommonWords): TeachingWords["stepTitles"] => {
  const kinds: Record<FoilKind, readonly [one: string, several: string]> = {
    slice: ["Слайс", "Слайси"],
    weave: ["Штопка", "Штопки"],
    backcomb: ["Начіс", "Начоси"],
    painted: ["Мальована панель", "Мальовані панелі"],
  }
  return {
    "leave-out": ({ name, isPair, side }) =>
      `Залишити: ${name || "волосся"}, ${isPair ? common.bothSides : common.onSide[side]}`,
    foils: ({ kind, numbers, isPair, side }) =>
      `${kinds[kind][numbers.length === 1 ? 0 : 1]} ${t.and(numbers.map(t.whole))}, ${isPair ? common.bothSides : common.onSide[side]}`,
  }
}

const labels: Record<Exclude<StepLineCode["code"], "take">, string> = {
  part: "Проділ",
  leave: "Лишити",
  hold: "Тримати",
  place: "Класти",
  product: "Засіб",
  paint: "Малювати",
  "keep-moist": "Повітря",
  "other-side": "Далі",
}
const takes = ({ stitching, pushed }: Extract<StepLineCode, { code: "take" }>) =>
  pushed ? "Начіс" : stitching ? "Штопка" : "Слайс"

/** What a line of a step is about. */
export const stepLabels = (line: StepLineCode) => (line.code === "take" ? takes(line) : labels[line.code])

const isMiddle = (name: LandmarkName) => name === "centre front" || name === "centre nape"

export const stepLines = (t: Tools, common: CommonWords): TeachingWords["stepLines"] => {
  const half = (mm: number) => t.mm(Math.round(mm * 2) / 2, 1)
  const spot = ({ landmark, behindMm }: { landmark: LandmarkName; behindMm: number }) =>
    `${landmarkName(landmark, "near")} (${t.mm(Math.max(0, behindMm))} углиб)`
  const run = ({ run: { from, to, isEven, isAcross } }: Extract<StepLineCode, { code: "part" }>) => {
    if (!isEven) return `Від ${spot(from)}${isAcross ? " через середину" : ""} до ${spot(to)}`
    const behind = `За ${t.mm(from.behindMm)} від лінії росту`
    if (isAcross && from.landmark === to.landmark && isMiddle(from.landmark))
      return `${behind}, обабіч ${landmarkName(from.landmark, "near")}`
    return from.landmark === to.landmark && !isAcross
      ? `${behind}, біля ${landmarkName(from.landmark, "near")}`
      : `${behind}, від ${landmarkName(from.landmark, "near")} до ${landmarkName(to.landmark, "near")}`
  }
  const depth = ({ start, end }: { start: number; end: number }) =>
    start === end ? half(start) : `${half(start)} на початку, ${half(end)} наприкінці,`
  const rows = (count: number, gapMm: number) => {
    const counted = t.count(count, { one: "# ряд", few: "# ряди", many: "# рядів", other: "# ряду" })
    if (count === 1) return `${counted}.`
    return gapMm < 0.5
      ? `${counted}, один за одним, без проміжку.`
      : `${counted}, один за одним, із проміжком ${half(gapMm)}.`
  }
  const lies = {
    down: "звисає вниз",
    up: "укласти вгору",
    "toward-face": "укласти до обличчя",
    "away-from-face": "укласти від обличчя",
  }
  const sheets: Record<"foil" | "board", (count: number) => string> = {
    foil: (count) => (count === 1 ? "Одну фольгу" : `Фольги поруч (${t.whole(count)})`),
    board: (count) => (count === 1 ? "Один планшет" : `Планшети поруч (${t.whole(count)})`),
  }
  const edges: Record<Exclude<EdgeShape, "straight">, string> = {
    v: "край літерою V",
    w: "край літерою W",
    u: "край літерою U",
    freehand: "край від руки",
  }
  return {
    part: (line) =>
      [
        `${run(line)}; ${common.direction(line.direction)}, завдовжки ${t.mm(line.partingMm)}.`,
        line.taken === "front"
          ? `Взяти ${depth(line.depthMm)} перед ним.`
          : `Взяти ${depth(line.depthMm)} за ним.`,
        ...(line.gapMm === null ? [] : [rows(line.rows, line.gapMm)]),
      ].join(" "),
    leave: "Заколоти, щоб не заважало; без засобу.",
    hold: ({ elevationDeg, overDirectionDeg }) =>
      overDirectionDeg === 0
        ? `${t.number(elevationDeg)}° від голови, на базі.`
        : `${t.number(elevationDeg)}° від голови, ${t.number(overDirectionDeg)}° від бази.`,
    take: ({ stitching, isSeenThrough, pushed }) =>
      [
        stitching
          ? `Стібки ${half(stitching.stitchMm)}, між ними ${half(stitching.gapMm)}; глибина хвостика ${half(stitching.dipMm)}.`
          : isSeenThrough
            ? "Усе волосся, так тонко, щоб крізь нього було видно світло."
            : "Усе волосся, рівно розкладене.",
        ...(pushed
          ? [
              `Начесати ${t.percent(pushed.share)} за ${t.spread(t.whole(pushed.leastStrokes), t.whole(pushed.mostStrokes))} рухи: подушка ${half(pushed.cushionMm)}.`,
            ]
          : []),
      ].join(" "),
    place: ({ carrier, count, widthMm, lengthMm, isTight, lie }) =>
      carrier === "open-air"
        ? "Відкрито; не торкатися волосся під ним."
        : carrier === "film"
          ? "Під плівкою; не торкатися волосся під ним."
          : `${sheets[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}, під пасмо, ${isTight ? "впритул до кореня" : "близько до кореня"}; ${lies[lie]}.`,
    product: ({ coats, startMm, isPastCushion, fromShare, toShare, faces }) => {
      const from =
        fromShare > 0
          ? `від ${t.percent(fromShare)} довжини`
          : isPastCushion
            ? `від подушки (${half(startMm)} від шкіри голови)`
            : `за ${half(startMm)} від шкіри голови`
      const to = toShare === 1 ? "до кінців" : `до ${t.percent(toShare)} довжини`
      return `${t.capital(common.coats(coats))}, ${from} ${to}, ${faces === 2 ? "пасмо з обох боків" : "пасмо з одного боку"}.`
    },
    paint: ({ mix, edge, highShare, lowShare, toShare, featherMm, faces }) =>
      [
        `Панель покласти рівно на руку чи планшет. Суміш ${mix}, ${faces === 2 ? "з обох боків" : "лише верхній бік"}:`,
        edge === "straight"
          ? `рівний край на ${t.percent(highShare)} довжини,`
          : `${edges[edge]} від ${t.percent(highShare)} довжини до ${t.percent(lowShare)},`,
        toShare === 1 ? "малювати до кінців." : `малювати до ${t.percent(toShare)} довжини.`,
        `Перші ${half(featherMm)} розтушувати: біля краю тонко, далі щільніше; нижче повний шар.`,
      ].join(" "),
    "keep-moist": ({ isUnderFilm }) =>
      isUnderFilm
        ? "Під плівкою за вказівкою виробника; не торкатися волосся під ним."
        : "Відкрито; не торкатися волосся під ним. Діє лише вологим: накрити плівкою чи зволожити за вказівкою виробника.",
    "other-side": ({ isEachRow }) =>
      isEachRow
        ? "Після кожного ряду — той самий ряд на другому боці, від того самого орієнтира."
        : "Другий бік, від того самого орієнтира.",
  }
}
