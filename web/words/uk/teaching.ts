import type { CarrierKind, FoilKind } from "../../../geometry/section/section"
import type { FoilPlace } from "../../core/schedule/placesOf"
import type { PieceCode } from "../../core/teaching/teachingPlan"
import type { CommonWords } from "../en/common/common"
import type { TeachingWords } from "../en/teaching"
import type { Tools } from "../tools"
import { foilCount, sectionCount } from "./placement/counted"
import { stepLabels, stepLines, stepTitles } from "./teachingSteps"

/** A technique as it is told to a class. */
export const teaching = (t: Tools, common: CommonWords): TeachingWords => ({
  done: {},
  aim: aim(t, common),
  tools: tools(t, common),
  times: times(t),
  checks: checks(t, common),
  faults,
  stepTitles: stepTitles(t, common),
  stepLabels,
  stepLines: stepLines(t, common),
  divide: "Поділити голову",
})

/** As the object of "освітлити". */
const places: Record<FoilPlace, string> = {
  hairline: "лінію росту",
  top: "верх",
  sides: "боки",
  back: "потилицю",
}

const aim = (t: Tools, common: CommonWords): TeachingWords["aim"] => {
  const things: Record<FoilKind, readonly [one: string, several: string]> = {
    slice: ["слайс", "слайси"],
    weave: ["штопка", "штопки"],
    backcomb: ["пасмо з начосом", "пасма з начосом"],
    painted: ["мальована панель", "мальовані панелі"],
  }
  const piece = ({ kind, direction, isOne }: PieceCode) => {
    const thing = things[kind][isOne ? 0 : 1]
    return direction === "parallel to hairline"
      ? `${thing} уздовж лінії росту`
      : `${thing} (${common.directions[direction]})`
  }
  return {
    "nothing-drawn": "Ще нічого не намальовано.",
    brighten: ({ places: where, foils, pieces }) =>
      `Освітлити ${t.and(where.map((each) => places[each]))}, ${sectionCount(t, foils)}: ${t.and(pieces.map(piece))}.`,
    leave: ({ names }) => `Залишити: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
  }
}

const tools = (t: Tools, common: CommonWords): TeachingWords["tools"] => {
  const carriers: Record<CarrierKind, (count: number) => string> = {
    foil: (count) => foilCount(t, count),
    board: (count) =>
      t.count(count, {
        one: "# планшет",
        few: "# планшети",
        many: "# планшетів",
        other: "# планшета",
      }),
    "open-air": (count) => `${sectionCount(t, count)} відкрито`,
    film: (count) => `${sectionCount(t, count)} під плівкою`,
  }
  const forms = {
    powder: "освітлювальна пудра",
    clay: "освітлювальна глина",
    cream: "освітлювальний крем",
    liquid: "рідкий освітлювач",
  }
  return {
    comb: "Гребінець із хвостиком, розпилювач із водою, по пензлю на миску",
    "section-clips": ({ count }) =>
      `Затискачі: ${t.whole(count)}, по одному на секцію голови; біля засобу не металеві`,
    clips: ({ low, high }) => `Затискачі: ${t.spread(t.whole(low), t.whole(high))}; біля засобу не металеві`,
    carriers: ({ carrier, count, widthMm, lengthMm }) =>
      carrier === "open-air" || carrier === "film"
        ? carriers[carrier](count)
        : `${carriers[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}`,
    mix: ({ mix, form, developerVolume, ratio }) =>
      t.capital(
        `${common.mix(mix)}: ${form ? forms[form] : "засіб за його інструкцією"}, ${t.number(developerVolume)}\u00a0vol, ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`,
      ),
    bowls: ({ count }) =>
      count === 1
        ? "1 миска з нещільною кришкою, не металева; ваги"
        : `${t.count(count, { one: "# миска", few: "# миски", many: "# мисок", other: "# миски" })} з нещільними кришками, не металеві; ваги`,
    keeping: "Рукавички, захист очей, фартух, рушник, волога вата для лінії росту",
    minding: ({ piece }) =>
      `Таймер; олівець, щоб записувати, коли накладено ${{ foil: "кожну фольгу", panel: "кожну панель", both: "кожну фольгу й панель" }[piece]}`,
  }
}

const times = (t: Tools): TeachingWords["times"] => ({
  "first-check": ({ firstMin, delicateMin, everyMin, piece }) =>
    `Перша перевірка через ${t.minutes(firstMin)} після ${{ foil: "першої накладеної фольги", panel: "першої нанесеної панелі", both: "першої" }[piece]}, через ${t.minutes(delicateMin)} на лінії росту та на тонкому, пористому чи освітленому волоссі; потім кожні ${t.minutes(everyMin)} (поширена практика). Передусім інструкція виробника.`,
  "max-time": ({ mix, maxMin, isFromSheet, firstCheckMin }) =>
    [
      isFromSheet
        ? `Суміш ${mix}: макс. час ${t.minutes(maxMin)} (за карткою засобу).`
        : `Суміш ${mix}: макс. час ${t.minutes(maxMin)} (поширена практика; картка не вказує). Спочатку прочитати інструкцію.`,
      ...(firstCheckMin ? [`Перша перевірка через ${t.minutes(firstCheckMin)}.`] : []),
    ].join(" "),
  "each-foil": ({ piece }) =>
    `Час ${{ foil: "кожної фольги", panel: "кожної панелі", both: "кожної фольги й панелі" }[piece]} йде від хвилини, коли засіб уперше торкнувся волосся: записати її й знімати кожну, коли готова.`,
  "learner-pace": ({ lowMin, highMin, foils }) =>
    `У темпі учня, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} на фольгу, накладання триває ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} (${foilCount(t, foils)}; поширена практика).`,
})

const mostNumbered = 8

const checks = (t: Tools, common: CommonWords): TeachingWords["checks"] => ({
  "see-through": ({ slices }) =>
    slices.length > mostNumbered
      ? "Крізь кожен тонкий слайс видно світло."
      : slices.length === 1
        ? `Видно світло крізь слайс ${t.and(slices.map(t.whole))}.`
        : `Видно світло крізь слайси ${t.and(slices.map(t.whole))}.`,
  "even-stitches": ({ stitchMm, gapMm, weave }) =>
    `Стібки рівні: ${t.mm(stitchMm, 1)} взято, ${t.mm(gapMm, 1)} залишено, по всій штопці ${t.whole(weave)}.`,
  "cushion-dry": "Подушка суха; засіб починається за нею.",
  "product-start": ({ rootMm }) =>
    `Засіб починається за ${t.mm(rootMm, 1)} або далі від шкіри голови; на шкірі його немає.`,
  "both-faces": "Кожне пасмо покрито з обох боків, без сухих місць.",
  "left-out-dry": ({ names }) =>
    `Залишено й досі сухо: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
  "sides-match": "Лівий і правий бік у дзеркалі однакові.",
  "minutes-noted": ({ piece }) =>
    `Хвилину ${{ foil: "кожної фольги", panel: "кожної панелі", both: "кожної фольги й панелі" }[piece]} записано, перевірено вчасно.`,
  "foils-sound": "Жодна фольга не сповзає, не здувається й не тепла.",
})

/** A fault, what it comes from, and what to do about it. */
const faults: TeachingWords["faults"] = {
  "bleeding-root": {
    fault: "Протікання на корінь",
    cause: "Забагато засобу або він починається на самому краю фольги.",
    cure: "Менше на пензель; тримати згин чистим; витерти край, перш ніж закрити.",
  },
  "band-near-root": {
    fault: "Смуга біля кореня",
    cause: "Засіб не доходить або фольга сповзла.",
    cure: "Покласти фольгу там, де починається за планом, і притискати під час нанесення.",
  },
  "dark-spots": {
    fault: "Темні плями всередині",
    cause: "Сухі місця: покрито один бік або волосся не розкладено рівно.",
    cure: "Розкласти волосся, покрити з обох боків, подивитися проти світла.",
  },
  "slice-too-deep": {
    fault: "Слайс затовстий",
    cause: "Хвостик гребінця захопив волосся з-за проділу.",
    cure: "Зробити проділ знову. Крізь тонкий слайс видно світло.",
  },
  "last-foil-dark": {
    fault: "Остання фольга затемна",
    cause: "Її накладено набагато пізніше за першу, а знято разом із нею.",
    cure: "Знімати кожну фольгу, коли готова, а не всі одразу.",
  },
  "last-panel-dark": {
    fault: "Остання панель затемна",
    cause: "Її нанесено набагато пізніше за першу, а знято разом із нею.",
    cure: "Знімати кожну панель, коли готова, а не всі одразу.",
  },
  "foil-slipping": {
    fault: "Фольга сповзає",
    cause: "Фольга заважка для пасма або корінь був мокрий від засобу.",
    cure: "Коротша фольга, складена раз; починати засіб трохи нижче.",
  },
  "cushion-wet": {
    fault: "Подушка мокра",
    cause: "Засіб дістався до начосу.",
    cure: "Витерти; починати за подушкою, на гладкому волоссі.",
  },
}
