import type { HairlineFault } from "../../../../geometry/scalp/hairlineFault"
import type { HeadMeasureName } from "../../../../geometry/scalp/headSize"
import type { DrawingCode, FieldCode, FileCode } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { documents, fieldNames } from "./fields"

const takeTwinOut = 'приберіть "twin", щоб роз’єднати пару'

export const hairlineFaults: Record<HairlineFault, string> = {
  "crosses-itself": "лінія росту перетнула б себе: тримайте кожну точку між сусідніми",
  "over-ear": "лінія росту пройшла б по вуху: ведіть її навколо вуха",
  "on-face": "нижче брів і на щоці лінії росту не буває: тримайте її вище",
  "off-scalp": "це поза шкірою голови: тримайте лінію росту на голові",
  "across-middle": "лінія росту одного боку перетнула б середину голови: тримайте її на своєму боці",
}

const measures: Record<HeadMeasureName, string> = {
  lengthMm: "довжина голови",
  breadthMm: "ширина голови",
  heightMm: "висота від вуха до верху",
  aroundMm: "обхват голови",
  overMm: "від вуха до вуха через верх",
  frontToNapeMm: "від передньої лінії росту до карка",
}

/** How fields must go together. */
export const fieldFaults = (t: Tools): Sentences<FieldCode> => ({
  "extra-field": ({ field, document }) =>
    `"${field}" — зайве поле, його немає в документі «${documents[document]}»: приберіть його`,
  taken: ({ value, firstPlace }) =>
    `очікується власне значення, але ${value} уже зайнято номером ${t.whole(firstPlace)} списку`,
  "unknown-mix": ({ known, mix }) => `очікується одна з наявних сумішей (${known.join(", ")}), є ${mix}`,
  "twin-of-itself": `очікується інше пасмо, вказано це саме; ${takeTwinOut}`,
  "twin-unknown": ({ twin }) => `очікується пасмо цього плану, вказано "${twin}"; ${takeTwinOut}`,
  "twin-of-another": ({ id, twin, named }) =>
    named === null
      ? `очікується пасмо, яке у відповідь називає "${id}", але "${twin}" не називає жодного; ${takeTwinOut}`
      : `очікується пасмо, яке у відповідь називає "${id}", але "${twin}" називає "${named}"; ${takeTwinOut}`,
  "pair-of-one": ({ pair, found }) =>
    `очікується два пасма з ${pair}, є ${t.whole(found)}; приберіть "pair", щоб пасмо було окремим`,
  "pair-not-single": 'очікується "single": true поруч; приберіть "pair", щоб пасмо було окремим',
  "nothing-to-coat": ({ startMm, lengthCm }) =>
    `очікується початок раніше, ніж закінчується засіб; є ${t.mm(startMm)} від шкіри голови за довжини волосся ${t.cm(lengthCm)}: почніть ближче або покрийте більше пасма`,
  "no-roots": ({ startMm, toMm }) =>
    `очікується більше за ${t.mm(startMm)}, де починається засіб; є ${t.mm(toMm)}: нехай корінь закінчується далі, або покрийте все однією сумішшю`,
  "roots-first-later": ({ afterMin }) =>
    `очікується 0 або спершу кінці; є ${t.minutes(afterMin)} після кінців, а корінь перший: спершу нанесіть на кінці або вкажіть 0 хвилин`,
  "no-ends": ({ toMm, lengthCm }) =>
    `очікується кінець раніше, ніж закінчується покрите волосся; є ${t.mm(toMm)} від шкіри голови за довжини волосся ${t.cm(lengthCm)}: нехай корінь закінчується ближче, або покрийте все однією сумішшю`,
  "one-mix-twice": ({ mix }) =>
    `очікується інша суміш, ніж на решті пасма; є ${mix} на обох: виберіть іншу або покрийте все однією сумішшю`,
  "landmark-off-middle": ({ landmark }) =>
    `очікується, що орієнтир ${landmark} зсунуто з обох боків і лише вгору чи вниз по середині`,
  "landmark-twice": ({ landmark, firstPlace }) =>
    `очікується кожен орієнтир один раз на бік, але ${landmark} уже зсунуто в номері ${t.whole(firstPlace)} списку`,
  hairline: ({ fault, side }) =>
    side === "left" ? `ліворуч: ${hairlineFaults[fault]}` : `праворуч: ${hairlineFaults[fault]}`,
  "head-size": ({ measure, mm, least, greatest }) =>
    `${measures[measure]}, ${t.mm(mm, 1)}, не узгоджується з двома іншими: зазвичай від ${t.number(least)} до ${t.mm(greatest)}`,
})

/** Why a text is no document at all. */
export const fileFaults = (t: Tools): Sentences<FileCode> => ({
  "too-large": ({ document, mostMb, foundMb }) =>
    `очікується ${documents[document]}, не більше ніж ${t.whole(mostMb)}\u00a0МБ, є ${t.whole(foundMb)}\u00a0МБ: це інший файл?`,
  empty: ({ document }) => `файл порожній: очікується ${documents[document]}, збережено в Partline`,
  "not-json": ({ document }) =>
    `файл обірвано або це не ${documents[document]}: збережіть його знову там, де створено`,
  "no-number": ({ field, word }) => `${fieldNames[field] ?? field}: очікується число, є ${word}`,
  "another-kind": ({ document, kind }) =>
    `це не ${documents[document]} Partline: очікується "kind": "${kind}"`,
  version: ({ known }) => `очікується ціле число, наразі ${t.whole(known)}`,
  "newer-version": ({ version, known }) =>
    `цей файл має версію ${version}, а цей Partline читає до ${known}: відкрийте його новішим Partline`,
  "more-like-these": ({ count }) => `і ще таких проблем: ${t.whole(count)}`,
  "damaged-link": "це посилання дорогою обірвано або змінено: попросіть його знову або техніку файлом",
  "newer-link": "це посилання з новішого Partline: відкрийте його таким самим новим",
  "too-large-link": "у цьому посиланні більше, ніж потрібно будь-якій техніці: попросіть техніку файлом",
  "not-on-shelf": "такого плану в цьому браузері немає",
})

/** What makes a line impossible to comb, or to divide the head by. */
export const drawingFaults = (t: Tools): Sentences<DrawingCode> => ({
  "place-outside": "очікується місце всередині лінії росту, вказано за нею",
  "line-outside": "очікується лінія всередині лінії росту, ця виходить за неї",
  "line-too-short": ({ leastMm, foundMm }) =>
    `очікується лінія щонайменше ${t.mm(leastMm)} завдовжки, є ${t.mm(foundMm, 1)}`,
  "line-crosses-itself": "очікується лінія, яка не перетинає себе",
  "divider-too-short": ({ leastMm, foundMm }) =>
    `очікується лінія щонайменше ${t.mm(leastMm)} завдовжки, є ${t.mm(foundMm, 1)}: проведіть знову`,
  "divider-crosses-itself": "очікується лінія, яка не перетинає себе: проведіть знову",
  "divider-on-another": ({ number }) =>
    `очікується окрема лінія, ця лежить на лінії поділу ${t.whole(number)}: перемістіть або приберіть`,
  "divider-divides-nothing":
    "очікується лінія від краю до краю, ця нічого не ділить: доведіть її до лінії росту чи іншої лінії поділу або приберіть",
  "divider-past-edge": ({ pastMm }) =>
    `очікується, що лінія закінчиться на краї, вона заходить за останній на ${t.mm(pastMm)}: закінчіть там або доведіть до наступного`,
  "divider-touches-another":
    "очікується лінія осторонь інших, ця торкається іншої: перемістіть або приберіть",
  "working-section-too-small": ({ leastCm2, foundCm2 }) =>
    `очікується щонайменше ${t.number(leastCm2)}\u00a0см² з кожного боку, є ${t.area(foundCm2)}: перемістіть або приберіть`,
})
