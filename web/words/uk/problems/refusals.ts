import type { RefusalCode } from "../../../core/document/refusal"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Problem } from "../../../core/fields/problem"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { common } from "../common/common"
import { pieces } from "../common/pieces"
import { working } from "../placement/working"
import { hairlineFaults } from "./faults"

/** Why a change cannot be, each a whole sentence. */
export function refusals(t: Tools, problem: (problem: Problem) => string): Sentences<RefusalCode> {
  const names = common(t)
  const { directions, sides } = names
  const { starts } = working(t, names)
  const named = (section: SectionNameCode) => say<SectionNameCode>(names.sectionName, section)
  const all = (sections: readonly SectionNameCode[]) => t.and(sections.map(named))
  const sentences: Sentences<RefusalCode> = {
    "too-short": "Закоротко для проділу: проведіть довшу лінію.",
    "outside-hairline": "Там волосся не росте: малюйте всередині лінії росту.",
    "crosses-itself": "Проділ не може перетинати себе: проведіть знову.",

    problem: ({ problem: found }) => t.capital(`${problem(found)}.`),
    "section-problem": ({ section, problem: found }) => t.capital(`${named(section)}: ${problem(found)}.`),
    "divider-problem": ({ divider, problem: found }) =>
      `Лінія поділу ${t.whole(divider)}: ${problem(found)}.`,
    "too-many-sections": ({ most }) => `У плані пасом не більше ніж ${t.whole(most)}.`,
    hairline: ({ fault }) => t.capital(`${hairlineFaults[fault]}.`),
    "break-the-pair": ({ section, because }) =>
      `${say(sentences, because)} Щоб змінити лише це (${named(section)}), роз’єднайте пару.`,

    "no-place-behind": ({ behindMm }) =>
      `Від лінії росту: за цим проділом немає місця на відстані ${t.mm(behindMm, 1)}.`,
    "never-so-long": ({ wantedMm }) => `Довжина: проділ там не може мати ${t.mm(wantedMm, 1)}.`,
    "only-so-long": ({ madeMm, wantedMm }) =>
      `Довжина: лише ${t.number(madeMm)} з ${t.mm(wantedMm, 1)} лежать усередині лінії росту. Спочатку перемістіть або вкажіть менше.`,
    "off-hairline": "Там воно не може йти вздовж лінії росту. Спочатку перемістіть.",
    "no-direction": ({ direction }) =>
      `Проділ там не проходить так: ${directions[direction]}. Спочатку перемістіть.`,
    "no-angle": ({ degrees }) =>
      `Кут: проділ під ${t.whole(degrees)}° там не проходить. Спочатку перемістіть.`,
    "angle-leaves-hair": ({ degrees }) =>
      `Кут: під ${t.whole(degrees)}° проділ вийшов би за волосся. Спочатку вкоротіть або перемістіть.`,
    "no-start-along": ({ side, wantedMm }) =>
      `Від центру лоба, ${sides[side]}: проділ не може починатися за ${t.mm(wantedMm, 1)} уздовж лінії росту. Спочатку присуньте його до лінії росту або перетягніть туди.`,
    "divider-runs-along": ({ section }) =>
      t.capital(
        `${named(section)}: лінія поділу йде вздовж, тож розрізати не вийде. Перемістіть, зробіть тоншим або залиште.`,
      ),

    "thinning-does-not-part": "Від стоншення ці два не розійдуться. Перемістіть одне з них.",
    "one-foil-does": "Для цього пасма досить однієї фольги.",
    "nowhere-to-paste": "Позаду немає вільного волосся. Перемістіть те, що там є, або вставте в інший план.",
    "paired-already": ({ section }) =>
      t.capital(`${named(section)}: уже в парі. Щоб віддзеркалити знову, роз’єднайте пару.`),

    "no-room-behind": "За цим немає місця для ще одного.",
    "no-room-on-other-side":
      "На другому боці немає місця для ще одного. Щоб продовжити з одним, роз’єднайте пару.",
    "no-room-for-stack": ({ section }) =>
      `Немає місця позаду: ${named(section)}. Пересуньте вперед або йдіть уздовж лінії росту.`,
    "stack-ends": ({ section, fits, asked }) =>
      `Позаду (${named(section)}) вміщується лише ${t.whole(fits)} з ${t.whole(asked)}: далі волосся немає.`,
    "no-hair-for-veil": ({ section }) =>
      `Немає волосся для вуалі позаду: ${named(section)}. Пересуньте вперед.`,
    "up-to-hairline": ({ sections }) =>
      t.capital(
        sections.length === 1
          ? `${all(sections)}: взято волосся аж до лінії росту. Спочатку зробіть тоншим або відсуньте назад.`
          : `${all(sections)}: взято волосся аж до лінії росту. Спочатку зробіть їх тоншими або відсуньте назад.`,
      ),
    "choose-two": "Виберіть дві фольги, щоб залишити простір між ними.",
    "nothing-between": ({ sections }) =>
      `Між цими двома немає волосся, яке можна залишити: ${all(sections)}. Відсуньте одне від одного.`,
    "wide-between": ({ mostMm, sections }) =>
      `Між цими двома понад ${t.mm(mostMm)}: ${all(sections)}. Виберіть два сусідні.`,
    "no-room-for": ({ name }) => `Там немає місця: «${name}».`,
    "no-room-for-technique": ({ name }) => `На цій голові немає місця для техніки «${name}».`,
    "no-room-for-start": ({ start }) => `На цій голові немає місця: «${starts[start].name}».`,
    "start-is-there": ({ start }) => `На голові вже є «${starts[start].name}».`,

    "no-new-growth": ({ foil, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} не має відрослого, яке можна покрити, не торкаючись освітленого волосся.`,
    "mix-in-use": ({ mix, foils, piece }) =>
      foils.length === 1
        ? `Суміш ${mix} використовує ${pieces(t).names(foils, piece)}. Спочатку дайте їй іншу суміш.`
        : `Суміш ${mix} використовують ${pieces(t).names(foils, piece)}. Спочатку дайте їм іншу суміш.`,
    "foil-without-mix": ({ foil, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))}: немає в жодній суміші.`,
  }
  return sentences
}
