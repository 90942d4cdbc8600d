import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { foilCount, sectionCount } from "./counted"
import { hairlineDone, stackDone, workingDone } from "./doneParts"

/** What undo calls a change of this chapter. */
export const done = (t: Tools, names: CommonWords): PlacementWords["done"] => {
  const { kinds, landmark, directions, sectionName } = names
  const nameOf = (section: SectionNameCode) => say<SectionNameCode>(sectionName, section)
  const several = (sections: number, first: SectionNameCode) =>
    sections === 1 ? t.capital(nameOf(first)) : `${sectionCount(t, sections)}, починаючи з «${nameOf(first)}»`
  return {
    ...hairlineDone(names),
    ...workingDone(t, names),
    ...stackDone(t, names),
    "draw-section": ({ kind }) => `Нове: ${kinds[kind]}`,
    "add-along-hairline": ({ kind, side, from, to }) =>
      `Нове: ${kinds[kind]}, ${landmark({ landmark: from, side })} – ${landmark({ landmark: to, side })}`,
    "change-kind": ({ kind }) => `Зміна на: ${kinds[kind]}`,
    rename: ({ section }) => `Нова назва: ${nameOf(section)}`,
    split: ({ section }) => `Поділ на фольги: ${nameOf(section)}`,
    reduce: ({ section }) => `Зменшення: ${nameOf(section)}`,
    "set-depth": "Зміна товщини",
    "take-hair": ({ taken }) => (taken === "front" ? "Волосся перед проділом" : "Волосся за проділом"),
    "set-stitch": "Зміна стібка",
    "set-gap": "Зміна проміжку",
    "set-dip": "Зміна глибини штопки",
    "set-base": ({ base }) => (base === "slice" ? "Начіс зі слайса" : "Начіс зі штопки"),
    "set-pushed-share": "Зміна частки начосу",
    "set-cushion": "Зміна подушки",
    "set-edge": "Зміна краю",
    "draw-edge": "Малювання краю",
    "set-edge-high": "Зміна початку малювання",
    "set-edge-drop": "Зміна спаду краю",
    "set-feather": "Зміна розтушування",
    "set-saturation": "Зміна насиченості",
    "set-note": "Зміна нотатки",
    "set-map-number": "Новий номер",
    "set-start": "Зміна початку засобу",
    "set-coated": "Зміна покритої частини",
    "set-faces": "Зміна покритих боків",
    "set-carrier": "Зміна підкладки",
    "set-elevation": "Зміна відтяжки",
    "set-over-direction": "Зміна перенаправлення",
    "set-foil-lie": "Зміна напряму фольги",
    "set-roots-mix": "Зміна суміші на корені",
    "set-roots-end": "Зміна кінця кореня",
    "set-roots-order": "Зміна черги сумішей",
    "set-roots-after": "Зміна часу кореня",
    "use-mix": ({ mix }) => `Суміш ${mix}`,
    "set-behind": "Зміна відстані від лінії росту",
    "set-along": "Переміщення вздовж лінії росту",
    "set-length": "Зміна довжини",
    "set-angle": "Поворот",
    "set-direction": ({ direction }) => `Поворот: ${directions[direction]}`,
    "repeat-behind": "Повтор позаду",
    "repeat-behind-both": "Повтор позаду, обидва боки",
    thinner: "Тонше",
    thicker: "Товще",
    mirror: "Віддзеркалення на другий бік",
    "break-pair": "Роз’єднання пари",
    "towards-hairline": "Ближче до лінії росту",
    "away-from-hairline": "Далі від лінії росту",
    "leave-between": "Залишене волосся між двома",
    "leave-veil": "Залишена вуаль",
    "leave-baby-hairs": "Залишений пушок",
    delete: ({ count }) => `Видалення: ${sectionCount(t, count)}`,
    paste: ({ count }) => `Вставлення: ${sectionCount(t, count)}`,
    move: "Переміщення",
    bend: "Вигин",
    nudge: ({ mm, way }) => `${t.mm(mm)} ${nudges[way]}`,
    "number-in-order": "Номери за порядком накладання",
    "apply-at": ({ section, count, place, foils }) =>
      `${several(count, section)}: у порядку ${ordinal(place)} з ${t.whole(foils)}`,
    "apply-left-out": ({ section, count, before, foils }) =>
      `${several(count, section)}: перед цим ${foilCount(t, before)} з ${t.whole(foils)}`,
    "place-technique": ({ name }) => `Техніка «${name}»`,
  }

  function ordinal(place: number) {
    return t.ordinal(place, { other: "#\u2011те" })
  }
}

const nudges = {
  away: "від лінії росту",
  towards: "до лінії росту",
  right: "уздовж лінії росту, до правого боку клієнта",
  left: "уздовж лінії росту, до лівого боку клієнта",
}
