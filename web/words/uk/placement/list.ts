import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { TakenTwiceCode } from "../../../core/figures/takenTwice"
import type { PlaceCode } from "../../../core/placement/places"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { sectionCount } from "./counted"

type ListWords = PlacementWords["list"]

/** The foils in the order they are applied, and the totals of them. */
export const list = (t: Tools, { kinds, place, sectionName, onSide, zones }: CommonWords): ListWords => {
  const named = (code: SectionNameCode) => say<SectionNameCode>(sectionName, code)
  const ordinal = (n: number) => t.ordinal(n, { other: "#\u2011те" })
  const whatAndWhere: ListWords["whatAndWhere"] = ({ kind, at, rank }) => {
    const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
    return rank === null ? what : `${what}, ${ordinal(rank)}`
  }
  const takenTwice = ({ lowG, highG, pairs, more }: TakenTwiceCode) => {
    const known = pairs.map((pair) => t.and(pair.map(shortName)))
    const others =
      more > 0
        ? [t.count(more, { one: "ще # пара", few: "ще # пари", many: "ще # пар", other: "ще # пари" })]
        : []
    return `на ${t.gramsRange({ low: lowG, mid: lowG, high: highG })} менше: волосся, взяте двічі (${[...known, ...others].join("; ")})`
  }
  const shortName = (code: SectionNameCode) => ("number" in code ? t.whole(code.number) : named(code))
  return {
    panel: "Фольги",
    title: (foils, piece) => (foils === 0 ? "Фольги" : pieces(t).count(foils, piece)),
    inOrder: "за порядком накладання",
    label: "Фольги за порядком накладання",
    empty:
      "Фольг ще немає. Виберіть «Слайс» і проведіть уздовж лінії росту, візьміть техніку або додайте пасмо введенням.",
    ordinal,
    dragHint: "Перетягніть, щоб накласти раніше чи пізніше",
    whatAndWhere,
    leftOut: ({ name, at, rank }) => {
      const what = `${name || t.capital(kinds["left-out"])}, ${say<PlaceCode>(place, at)}`
      return rank === null ? what : `${what}, ${ordinal(rank)}`
    },
    mix: (mix) => `суміш ${mix}`,
    noProduct: "без засобу",
    lengthAndDepth: ({ lengthMm, startMm, endMm }) =>
      startMm === endMm
        ? `${t.mm(lengthMm)} × ${t.mm(startMm, 1)}`
        : `${t.mm(lengthMm)} × ${t.number(startMm, 1)}–${t.mm(endMm, 1)}`,
    pair: ({ other, side }) =>
      side === "centre" ? `пара: ${named(other)}` : `пара: ${named(other)} ${onSide[side]}`,
    selectSeveral: "Вибрати кілька",
    all: "Усі",
    copy: "Копіювати",
    paste: (sections) => `Вставити ${t.whole(sections)}`,
    numberInOrder: "Пронумерувати так",
    selected: (sections) => `Вибрано: ${sectionCount(t, sections)}`,
    copied: (sections) => `Скопійовано: ${sectionCount(t, sections)}`,
    copyRefused: "Приватні вікна не зберігають, а для копіювання потрібне сховище браузера.",
    pasteUnreadable: "Скопійоване не прочитати. Скопіюйте пасма знову.",
    pasteNothing: "Спочатку щось скопіюйте.",
    dragCancelled: "Лишилося, де було",

    overlaps: {
      title: "Фольги, що перекриваються",
      told: ({ earlier, later, areaCm2 }) => {
        const [first, second] = [named(earlier), named(later)]
        if (later.code === "left-out")
          return `${t.capital(second)}: лежить на ${t.area(areaCm2)} волосся, яке бере ${first}.`
        return earlier.code === "left-out"
          ? `${t.capital(second)}: бере ${t.area(areaCm2)} волосся, залишеного як «${first}».`
          : `${t.capital(second)}: бере ${t.area(areaCm2)} волосся, яке бере ${first}.`
      },
      reduce: (section) => `Зменшити: ${named(section)}`,
      takenTwice,
      inTotals: (code) => `У підсумках ${takenTwice(code)}.`,
    },

    notes: {
      title: "Подивіться ще раз",
      told: (told) => {
        const name = t.capital(named(told.section))
        if (told.code === "bare-coat")
          return told.part === "ends"
            ? `${name}: суміш на корені сягала б ${t.mm(told.toMm)}, за довжини волосся ${t.cm(told.lengthCm)}. Суміш ${told.mix} нічого не покриває.`
            : `${name}: засіб починається за ${t.mm(told.startMm)} від шкіри голови, а корінь закінчується на ${t.mm(told.toMm)}. Суміш ${told.mix} нічого не покриває.`
        return told.code === "deep-slice"
          ? `${name}: товщина ${t.mm(told.depthMm)}; понад ${t.mm(told.mostMm)} середина суцільного слайса лишається темнішою.`
          : `${name}: засіб починався б за ${t.mm(told.startMm)} від шкіри голови й закінчувався раніше, за довжини волосся ${t.cm(told.lengthCm)}. Нічого не покрито.`
      },
      cure: (code) =>
        ({
          "deep-slice": "Зробити тоншим",
          bare: "Почати ближче, покрити лише скільки треба",
          "bare-coat": "Покрити однією сумішшю",
        })[code],
    },

    totals: {
      title: "Підсумки за зонами",
      zone: "Зона",
      foils: "Фольги",
      hairs: "Волосини",
      hairToCoat: "Під нанесення",
      product: "Засіб",
      zones: {
        top: t.capital(zones.top),
        left: t.capital(zones.left),
        right: t.capital(zones.right),
        back: t.capital(zones.back),
      },
      all: "Усього",
    },
  }
}
