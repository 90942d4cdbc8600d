import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { PlaceCode } from "../../../core/placement/places"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { foilCount, sectionCount } from "./counted"

type EditorWords = PlacementWords["editor"]

/** Every way to change the sections in hand without a pointer, and adding one by typing. */
export const editor = (t: Tools, names: CommonWords): EditorWords => {
  const { kinds, place, sectionName, onSide, sides } = names
  const depths: EditorWords["depths"] = {
    micro: "Мікро",
    fine: "Тонко",
    standard: "Стандарт",
    heavy: "Товсто",
  }
  const stitches: EditorWords["stitches"] = { fine: "Дрібний", medium: "Середній", chunky: "Великий" }
  const roots: EditorWords["roots"] = {
    tight: "Впритул",
    standard: "Стандарт",
    soft: "М’яко",
    regrowth: "Лише відросле",
  }
  return {
    several: (sections) => `Вибрано: ${sectionCount(t, sections)}`,
    title: ({ kind, at, number, name }) => {
      const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
      const named = name ? `${name}: ${what}` : what
      return number === null ? named : `${t.whole(number)} ${named}`
    },
    close: "Закрити",
    kind: "Тип пасма",
    figures: {
      direction: "Напрям",
      parting: "Проділ",
      scalp: "Шкіра голови",
      share: "Частка взятого волосся",
      hairs: "Волосини",
      strandLength: "Довжина пасма",
      hair: "Волосся",
      hairToCoat: "Під нанесення",
      foils: "Фольги",
      product: "Засіб",
    },
    name: "Назва",
    pair: ({ other, side }) =>
      side === "centre"
        ? `Пара: ${say<SectionNameCode>(sectionName, other)}. Зміни стосуються обох.`
        : `Пара: ${say<SectionNameCode>(sectionName, other)} ${onSide[side]}. Зміни стосуються обох.`,
    breakPair: "Роз’єднати пару",
    wide: (foils) =>
      foils === 1
        ? `Ширше за свою фольгу: ${foilCount(t, foils)}.`
        : `Ширше за свою фольгу: ${foilCount(t, foils)} поруч.`,
    split: (foils) => `Поділити: ${foilCount(t, foils)}`,

    behindHairline: "Від лінії росту",
    fromCentreFront: (side) => `Від центру лоба, ${sides[side]}`,
    length: "Довжина",
    angle: "Кут",
    runs: "Напрям проділу",

    taken: "Взяте волосся",
    takenFrom: { front: "Перед проділом", behind: "За проділом" },
    depthOfAll: "Товщина",
    depthAtStart: "Товщина на початку",
    depthAtEnd: "Товщина наприкінці",
    depths,
    depth: (word, mm) => `${depths[word]} ${t.mm(mm, 1)}`,
    stitch: "Стібок",
    stitches,
    stitchOf: (word, mm) => `${stitches[word]} ${t.mm(mm, 1)}`,
    productStarts: "Початок засобу",
    roots,
    root: (word, mm) => (word === "regrowth" ? roots[word] : `${roots[word]} ${t.mm(mm, 1)}`),

    all: "Усі параметри",
    stitchMm: "Стібок",
    gapMm: "Проміжок",
    dipMm: "Глибина штопки (хвостика)",
    backcombedFrom: "Начіс із",
    bases: { slice: "Слайса", weave: "Штопки" },
    pushedShare: "Частка начосу",
    cushion: "Подушка",
    note: "Нотатка",
    mapNumber: "Номер на схемі",
    rootDistance: "Початок, від шкіри голови",
    coatedFrom: "Покрито від",
    coatedTo: "Покрито до",
    coat: "Покриття",
    faces: { both: "З обох боків", one: "Лише поверхня (мазком)" },
    carrier: "Підкладка",
    carrierWidth: "Ширина фольги",
    carrierLength: "Довжина фольги",
    elevation: "Відтяжка",
    overDirection: "Перенаправлення",
    foilLie: "Напрям фольги",
    mix: "Суміш",
    rootsMix: {
      legend: "Суміш на корені",
      none: "Як решта",
      onlyOne: "Другу суміш для кореня додають у розділі «Формула».",
      to: "Кінець кореня, від шкіри",
      first: "Наноситься першою",
      firsts: { ends: "Кінці", roots: "Корінь" },
      after: "Корінь пізніше на",
      afterNote:
        "0: обидві за один раз. Інакше для кореня відкривають ще раз; у нього свій час, і його позначають окремо.",
    },

    typing: {
      title: "Додати введенням",
      kind: "Що",
      side: "Бік",
      from: "Від",
      to: "До",
      startsBehind: "На початку, від лінії росту",
      drift: "Відхід назад на",
      add: (kind) => `Додати: ${kinds[kind]}`,
      refused: "Виберіть два місця, далі одне від одного.",
    },
  }
}
