import type { Consistency } from "../../../../presets/formula/consistency"
import { visitWeeks } from "../../../../presets/formula/developers"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { BlendProblem } from "../../../core/mixing/blend"
import type { DeveloperReason, GentleReason, WeakerOffer } from "../../../core/mixing/developer"
import type { PouredBottle } from "../../../core/mixing/pouring"
import type { FormulaWords } from "../../en/formula/formula"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"

type MixingWords = FormulaWords["mixing"]

/** What this chapter says in the words of others. */
export type FoilNames = {
  foilCount(count: number, piece?: Piece): string
  foils(numbers: readonly number[], piece?: Piece): string
}

/** The mixes of a plan and their bowls: strength, ratio, grams, and why. */
export const mixing = (t: Tools, { foilCount, foils }: FoilNames): MixingWords => {
  const weeks = t.spread(t.whole(visitWeeks.range[0]), t.whole(visitWeeks.range[1]))
  return {
    name: (letter) => `Суміш ${letter}`,
    remove: (letter) => `Прибрати суміш ${letter}`,
    add: (letter) => `Додати суміш ${letter}`,
    product: "Засіб із карткою",
    otherProduct: "або інший, за назвою",
    developer: "Окислювач",
    vol: ({ volume, percent }) => `${t.number(volume)}\u00a0vol, ${t.number(percent, 1)}\u00a0%`,
    ratio: "Освітлювач до окислювача, за вагою",
    parts: (parts) => `1 : ${t.number(parts)}`,
    developerParts: "Окислювача на 1 частину освітлювача",
    additive: "Добавка",
    moveFoil: "Перенести фольгу в іншу суміш",
    foilIn: ({ foil, piece, kind, place }) => `${t.capital(foils([foil], piece))}: ${kind}, ${place}`,

    consistencies: consistencyWords,
    wants: ({ foils: count, consistency, parts }) =>
      `${foilCount(count)}: ${consistencyWords[consistency]}, 1 : ${t.number(parts)}`,
    mixSo: (parts) => `Змішати 1 : ${t.number(parts)}`,

    noSheet: "Для цього засобу немає картки: вирішує його інструкція.",
    suggested: ({ volume }) => `Пропонується: ${t.number(volume)}\u00a0vol.`,
    use: (volume) => `Взяти ${t.number(volume)}\u00a0vol`,
    why: developerReasons(t),
    weaker: weakerWords(t),
    visit: ({ visit, fromLevel, toLevel, volume }) =>
      visit === 1
        ? `Сьогодні: від рівня ${t.number(fromLevel)} до ${t.number(toLevel)} з ${t.number(volume)}\u00a0vol.`
        : `Візит ${t.whole(visit)}, через ${weeks}\u00a0тиж. і після перевірки волосся: від рівня ${t.number(fromLevel)} до ${t.number(toLevel)} з ${t.number(volume)}\u00a0vol.`,

    visits: {
      title: (count) => visits(t, count),
      today: (level) => `Сьогодні — до рівня ${t.number(level)}, і наступний візит`,
      name: (plan) => `${plan}, візит 2`,
      after: ({ plan, day, toLevel, volume }) =>
        `Візит 2, після «${plan}» від ${t.date(day)}. Спочатку оглянути волосся й внести його рівень; мета — рівень ${t.number(toLevel)}, не більше ніж ${t.number(volume)}\u00a0vol.`,
      stored: ({ name, day }) =>
        `Візит 2 є серед ваших планів: ${name}, починаючи з ${t.date(day)} (${t.whole(visitWeeks.range[0])}\u00a0тиж., поширена практика). Того дня про здоров’я запитують знову.`,
      open: "Відкрити візит 2",
      undo: "Відмінити обидві зміни",
      notStored: (why) => `Нічого не змінено: план візиту 2 не збережено. ${why}`,
      note: ({ toLevel, volume }) =>
        `Наступний візит, через ${weeks}\u00a0тиж.: перевірити волосся, потім до рівня ${t.number(toLevel)} з ${t.number(volume)}\u00a0vol.`,
    },

    suggestions: {
      title: (count) =>
        t.count(count, {
          one: "За консультацією пропонується # суміш",
          few: "За консультацією пропонуються # суміші",
          many: "За консультацією пропонується # сумішей",
          other: "За консультацією пропонується # суміші",
        }),
      use: "Взяти пропозицію",
      mix: ({ volume, percent, parts, foils: numbers }) =>
        `${t.number(volume)}\u00a0vol (${t.number(percent, 1)}\u00a0%), 1 : ${t.number(parts)}; ${foils(numbers)}`,
      why: {
        ...developerReasons(t),
        "no-sheet": ({ product }) => `Немає картки засобу «${product}»: вирішує його інструкція.`,
        consistency: ({ consistency }) => `Консистенція: ${consistencyWords[consistency]}.`,
        joined: "Кількості, замалі для окремої миски, йдуть разом з іншою сумішшю.",
      },
    },

    unused: (letter) => `Суміш ${letter} ще не використовує жодна фольга.`,
    wanted: ({ foils: count, piece, mix, wantedG }) =>
      `Суміш ${mix}, ${foilCount(count, piece)}: ${t.gramsRange(wantedG)} на волосся; ${count === 1 ? "миску" : "миски"} заплановано за верхньою цифрою.`,
    mixed: ({ mixedG, wasteG }) =>
      `Змішано ${t.grams(mixedG)}, з них ${t.gramsRange(wasteG)} лишається в мисці й на пензлі або як залишок.`,
    cost: (amount) => `Коштує ${t.fixed(amount, 2)}.`,
    strength: ({ volume, percent, percentWw, onHeadPercent }) =>
      `${t.number(volume)}\u00a0vol продають як ${t.number(percent, 1)}\u00a0% (розраховано ${t.number(percentWw)}\u00a0% за масою; етикетки різняться); ${t.number(onHeadPercent, 1)}\u00a0% у готовій суміші.`,

    bowls: {
      title: (count) =>
        count === 0
          ? "Миски"
          : t.count(count, { one: "# миска", few: "# миски", many: "# мисок", other: "# миски" }),
      none: "Фольг ще немає. Тут будуть миски для них.",
      toPlacement: "Намалювати фольги",
    },
    bowl: {
      when: (minute) => `змішати на хвилині ${t.whole(minute)}`,
      foils: (numbers, piece) => t.capital(foils(numbers, piece)),
      lightener: "Освітлювач",
      developer: "Окислювач",
      strength: ({ volume, percent, parts }) =>
        `${t.number(volume)}\u00a0vol (${t.number(percent, 1)}\u00a0%), 1 : ${t.number(parts)}`,
      byVolume: (ml) => `Окислювач за об’ємом: ${t.number(ml)}\u00a0мл`,
      grams: (grams) => `${t.number(grams, 1)}\u00a0г`,
    },
    line: ({ product, volume, percent, parts, foils: count }) =>
      `${product}, ${t.number(volume)}\u00a0vol (${t.number(percent, 1)}\u00a0%), 1 : ${t.number(parts)}, ${foilCount(count)}`,
    change: "Змінити",
    changeThis: (letter) => `Змінити суміш ${letter}`,
    title: "Суміші",
    poured: {
      poured: ({ bottles }) => `Окислювач за вагою: ${bottles.map((each) => bottle(t, each)).join(" + ")}.`,
      "not-poured": ({ volume, problem }) =>
        `${t.number(volume)}\u00a0vol не скласти з ваших флаконів: ${say<BlendProblem>(blendProblems(t), problem)}`,
    },
    blend: blendProblems(t),
    additives: {
      "instead-of-developer": ({ grams, name }) =>
        `${t.number(grams, 1)}\u00a0г «${name}» замість такої ж кількості окислювача: пропорція та сама.`,
      "beside-developer": ({ grams, name, restParts }) =>
        `${t.number(grams, 1)}\u00a0г «${name}» понад окислювач: 1 г освітлювача на ${t.number(restParts)}\u00a0г решти.`,
    },
    problem: mixProblems(t),
    note: {
      "pot-life-assumed": ({ product, minutes }) =>
        `«${product}»: придатності суміші не вказано; прийнято ${t.minutes(minutes)} (поширена практика).`,
      "foil-outlasts-bowl": ({ foil, minutes }) =>
        `Фольга ${foil} потребує більше часу, ніж придатна суміш (${t.minutes(minutes)}). Поділіть її на дві.`,
      "off-ratio": ({ scaleStepG, parts, wantedParts }) =>
        `З кроком ${t.number(scaleStepG)}\u00a0г у мисці виходить 1 : ${t.number(parts)} замість 1 : ${t.number(wantedParts)}. Точніші ваги тримають пропорцію.`,
    },
  }
}

const consistencyWords: Record<Consistency, string> = {
  thick: "густа",
  creamy: "як густий йогурт",
  loose: "рідка",
}

const levels = (t: Tools, count: number) =>
  t.count(count, { one: "# рівень", few: "# рівні", many: "# рівнів", other: "# рівня" })
const visits = (t: Tools, count: number) =>
  t.count(count, { one: "# візит", few: "# візити", many: "# візитів", other: "# візиту" })

const developerReasons = (t: Tools): Sentences<DeveloperReason> & MixingWords["why"] => ({
  "lift-printed": ({ liftLevels, volume, printed }) =>
    `Освітлити на ${levels(t, liftLevels)}; картка засобу вказує ${t.spread(t.number(printed.low), t.number(printed.high))} для ${t.number(volume)}\u00a0vol.`,
  "lift-expected": ({ liftLevels, volume, weakerVolume }) =>
    `Освітлити на ${levels(t, liftLevels)}; від ${t.number(weakerVolume)}\u00a0vol цього за максимальний час не очікується, від ${t.number(volume)}\u00a0vol — очікується.`,
  "not-in-one-visit": ({ liftLevels, volume, visits: count }) =>
    `Освітлення на ${levels(t, liftLevels)} з ${t.number(volume)}\u00a0vol за максимальний час не очікується. Заплануйте ${visits(t, count)} й оцінюйте волосся між ними.`,
  "more-than-one-visit": ({ liftLevels, mostLevels, volume, visits: count }) =>
    `Освітлення на ${levels(t, liftLevels)} — більше ніж один візит: до ${t.number(mostLevels)} з ${t.number(volume)}\u00a0vol, найсильнішим тут. Заплануйте ${visits(t, count)} й оцінюйте волосся між ними.`,
  "level-now-unknown": "Рівня зараз не введено. Введіть його, перш ніж вибирати окислювач.",
  "target-unknown": "Цільового рівня не введено. Введіть його, перш ніж вибирати окислювач.",
  "no-lift-printed": ({ product }) => `«${product}»: рівнів освітлення не вказано. Внесіть їх з упаковки.`,
  "target-beyond-scale": ({ level, lightestLevel }) =>
    `Цільовий рівень ${t.number(level)} поза шкалою. Виберіть ${t.number(lightestLevel)} або менше.`,
  "target-darker": ({ fromLevel, toLevel }) =>
    `Цільовий рівень ${t.number(toLevel)} темніший за волосся (${t.number(fromLevel)}). Освітлювач не затемнює: виберіть світліший рівень або темне пасмо.`,
  "at-target": ({ level }) => `Волосся вже на рівні ${t.number(level)}. Йому потрібен тон, а не освітлення.`,
  "no-lift-allowed": ({ product }) =>
    `«${product}»: освітлення з дозволеним тут окислювачем не вказано. Виберіть інший засіб.`,
})

const gentleWords: Record<GentleReason, string> = {
  hairline: "волосся на лінії росту тонке й освітлюється першим",
  fine: "тонке волосся швидше освітлюється й швидше розтягується",
  porous: "пористе волосся реагує швидше",
  lightened: "вже освітлене волосся пористіше",
}

const weakerWords =
  (t: Tools) =>
  ({ volume, reasons, shortByLevels }: WeakerOffer) => {
    const why = t.and(reasons.map((reason) => gentleWords[reason]))
    return shortByLevels > 0
      ? `Або ${t.number(volume)}\u00a0vol: ${why}, але до цілі бракуватиме: ${levels(t, shortByLevels)}.`
      : `Або ${t.number(volume)}\u00a0vol: ${why}.`
  }

const blendProblems = (t: Tools): Sentences<BlendProblem> & MixingWords["blend"] => ({
  "no-bottles": "введіть хоча б один флакон, наприклад 12,3.",
  "bottle-percent": ({ percent }) => `${t.number(percent)}\u00a0% — не концентрація; введіть від 0 до 100.`,
  "want-percent": ({ percent }) => `${t.number(percent)}\u00a0% — не концентрація; введіть від 0 до 100.`,
  "no-amount": ({ grams }) => `${t.number(grams)}\u00a0г — не кількість; введіть грами понад 0.`,
  "want-too-weak": ({ wantPercent, weakestPercent }) =>
    `${t.number(wantPercent)}\u00a0% слабше за найслабший флакон, ${t.number(weakestPercent)}\u00a0%; додайте слабший.`,
  "want-too-strong": ({ wantPercent, strongestPercent }) =>
    `${t.number(wantPercent)}\u00a0% сильніше за найсильніший флакон, ${t.number(strongestPercent)}\u00a0%; виберіть слабшу концентрацію.`,
})

const bottle = (t: Tools, { volume, percent, grams }: PouredBottle) =>
  `${t.number(grams, 1)}\u00a0г ${t.number(volume)}\u00a0vol (${t.number(percent, 1)}\u00a0%)`

const mixProblems = (t: Tools): MixingWords["problem"] => {
  const said = (ratio: { product: string; lightener: number; developer: number }) =>
    `${ratio.product}, пропорція ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`
  return {
    "ratio-parts": (ratio) =>
      `${said(ratio)}: введіть частини понад 0, спочатку освітлювач, наприклад 1 : 2.`,
    "ratio-upside-down": (ratio) =>
      `${said(ratio)}: освітлювача більше, ніж окислювача. Введіть спочатку освітлювач, ${t.number(ratio.developer)} : ${t.number(ratio.lightener)}.`,
    "no-strength": ({ product, percent }) =>
      `${product}, окислювач: ${t.number(percent)}\u00a0% — не концентрація; введіть від 3 до 12 %.`,
    "scale-step": ({ grams }) =>
      `Ваги: ${t.number(grams)}\u00a0г — не крок ваг; введіть 0,1; 0,5; 1; 2 або 5 г.`,
    "foil-grams": ({ foil, lowG, highG }) =>
      `Фольга ${foil}: від ${t.number(lowG)} до ${t.number(highG)}\u00a0г засобу; введіть грами від 0, спочатку меншу цифру.`,
    "foil-minutes": ({ foil, minutes }) =>
      `Фольга ${foil}: ${t.number(minutes)}\u00a0хв на накладання; введіть хвилини від 0.`,
  }
}
