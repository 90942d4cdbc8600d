import type { FixCode } from "../../../core/fixes/fix"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { LiftsFirst } from "../../../core/lift/liftsFirst"
import type { GoalRefusal } from "../../../core/lift/scheduleReady"
import type { HeatRefusal } from "../../../core/schedule/heatRefusal"
import type { clashes as english } from "../../en/timing/clashes"
import type { OfPieces } from "../../pieceWords"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieceAsObject, pieces } from "../common/pieces"

type ClashesWords = ReturnType<typeof english>

/** What the clock finds: why there is none, what was assumed, what clashes, and what mends it. */
export const clashes = (t: Tools): ClashesWords => {
  const min = (minutes: number) => t.minutes(minutes, 1)
  const numbers = (foils: readonly number[]) => t.runs(foils, (from, to) => `${from}–${to}`)
  const { word, names } = pieces(t)
  const foils = (list: readonly number[], piece?: Piece) => `${word(list.length, piece)} ${numbers(list)}`
  const one = (foil: number, piece?: Piece) => t.capital(names([foil], piece))
  const others = (count: number) => (count === 0 ? "" : ` (і ще ${t.whole(count)})`)

  /** In the genitive. */
  const without = (count: number, piece: Piece = "foil") =>
    count === 1
      ? { foil: "фольги", panel: "панелі", both: "фольги чи панелі" }[piece]
      : { foil: "фольг", panel: "панелей", both: "фольг і панелей" }[piece]

  const goals: Sentences<GoalRefusal> & Pick<ClashesWords["problems"], GoalRefusal["code"]> = {
    "from-off-scale": ({ level, darkest, lightest }) =>
      `Рівень зараз — ${t.number(level)}: шкала від ${darkest} до ${lightest}.`,
    "to-off-scale": ({ level, darkest, lightest }) =>
      `Цільовий рівень — ${t.number(level)}: шкала від ${darkest} до ${lightest}.`,
    "not-lighter": "Цільовий рівень має бути світліший за рівень зараз.",
  }

  const orOverride = "Вимкнути тепло або письмово обійти цю заборону."
  const heat: Sentences<HeatRefusal> & ClashesWords["heat"] = {
    "too-warm": ({ ceilingC, warmthC }) =>
      `Без тепла: понад ${t.number(ceilingC)} °C освітлення не розраховується, а введено ${t.number(warmthC)} °C. Зменшити температуру.`,
    "not-on-sheet": "Без тепла: картка засобу його не дозволяє. Вимкнути тепло.",
    "strong-mix": ({ mix, volume }) =>
      `Без тепла: суміш ${mix} зроблено з ${t.number(volume)}\u00a0vol. ${orOverride}`,
    "at-hairline": `Без тепла: є фольги на лінії росту. ${orOverride}`,
    cushion: `Без тепла: подушка начосу лежить біля кореня. ${orOverride}`,
    "longer-than-usual": ({ usualMostMin, askedMin }) =>
      `Зазвичай тепло триває не довше ніж ${min(usualMostMin)}: введено ${min(askedMin)}. ${orOverride}`,
    "too-long": ({ mostMin, askedMin }) =>
      `Картка засобу дозволяє тепло не довше ніж ${min(mostMin)}: введено ${min(askedMin)}. Скоротити тепло.`,
    "no-minutes": "Тепло має тривати понад 0 хвилин.",
  }

  const first: Record<LiftsFirst, string> = {
    hairline: "Волосся на лінії росту освітлюється першим: готовність очікується",
    fine: "Тонке волосся освітлюється раніше: готовність очікується",
  }

  const fixes: Sentences<OfPieces<FixCode>> & ClashesWords["fixes"] = {
    "each-off": ({ piece }) => `Знімати кожну ${pieceAsObject(piece)}, коли готова`,
    reorder: () => "Накладати в іншому порядку, найповільніші першими",
    "weaker-early": ({ count, piece }) =>
      count === 1
        ? `Слабший окислювач для першої ${without(1, piece)}`
        : `Слабший окислювач для перших ${without(2, piece)}: ${t.whole(count)}`,
    "order-and-strength": ({ count, piece }) =>
      count === 1
        ? `Інший порядок і слабший окислювач для першої ${without(1, piece)}`
        : `Інший порядок і слабший окислювач для перших ${without(2, piece)}: ${t.whole(count)}`,
    "closest-together": ({ piece }) => `Звести готовність усіх ${without(2, piece)} якнайближче`,
    "fresh-bowl": ({ mixes, foils: at, piece }) =>
      `Змішати свіжу миску (${t.and(mixes)}): ${foils(at, piece)}`,
    "second-colourist": "Працювати з асистентом",
    "no-drying": ({ savesMin }) => `Без сушіння (${min(savesMin)})`,
    "later-end": ({ bookingMin, byMin }) =>
      `Записати ${t.minutes(bookingMin)}: кінець на ${t.minutes(byMin)} пізніше`,
    "fewer-foils": ({ foils: list, piece }) =>
      list.length === 1
        ? `Без ${without(1, piece)} ${numbers(list)}`
        : `Без ${without(2, piece)}, з обох боків порівну: ${numbers(list)}`,
    "another-day": ({ foils: list, piece }) =>
      list.length === 1
        ? `${t.capital(pieceAsObject(piece))} ${numbers(list)} — на інший день`
        : `На інший день, з обох боків порівну: ${numbers(list)}`,
  }

  return {
    problems: {
      "no-foils": "Немає фольг для розрахунку часу: спочатку намалюйте одну.",
      hands: ({ count }) => `Запланувати можна одну або дві особи, не ${count}.`,
      "pace-share": "Темп особи має бути понад 0.",
      "break-backwards": "Перерва має закінчуватися після початку.",
      "foil-twice": ({ foil }) => `Фольга ${foil} є в плані двічі.`,
      "foil-bare": ({ foil }) =>
        `Фольга ${foil}: нічого не покрито; почніть засіб ближче до шкіри голови або покрийте більше пасма.`,
      "foil-pace": ({ foil, minutes }) =>
        `Фольга ${foil}: темп ${t.number(minutes)}; введіть хвилини на фольгу понад 0.`,
      "foil-limit": ({ foil }) => `Фольга ${foil}: макс. час засобу має бути понад 0 хвилин.`,
      "roots-after-limit": ({ foil, afterMin, limitMin }) =>
        `Фольга ${foil}: корінь був би через ${t.minutes(afterMin)}, коли кінці вже на своєму макс. часі ${t.minutes(limitMin)}. Нанесіть його раніше.`,
      "foil-mix": ({ foil, mix }) => `Фольга ${foil}: суміші ${mix} немає.`,
      "foil-ready": ({ foil, mix }) =>
        `Фольга ${foil}: невідомо, коли вона може бути готова із сумішшю ${mix}.`,
      "no-bowl": ({ foil, mix }) => `Фольга ${foil}: для неї немає миски суміші ${mix}.`,
      "bowl-empty": ({ mix }) => `Суміш ${mix}: у мисці має бути понад 0 г.`,
      "bowl-pot-life": ({ mix }) => `Суміш ${mix}: придатність має бути понад 0 хвилин.`,
      "checks-apart": "Між перевірками має бути понад 0 хвилин.",
      ...goals,
    },

    assumed: {
      "lift-by-sheet": ({ fromLevel, toLevel }) =>
        `Від рівня ${t.number(fromLevel)} до ${t.number(toLevel)}: час готовності — оцінка за освітленням у картці засобу.`,
      "lift-by-strand": ({ fromLevel, toLevel }) =>
        `Від рівня ${t.number(fromLevel)} до ${t.number(toLevel)}: час готовності — оцінка за карткою засобу й тестом на пасмі.`,
      "no-levels": ({ low, high }) =>
        `Рівнів не введено, тож час типовий (${t.spread(t.number(low), t.minutes(high))}, припущення). Перевіряйте пасмо.`,
      "lifts-first": ({ hair, low, high, lookMin }) =>
        `${first[hair]} за ${t.spread(t.number(low * 100), t.percent(high))} звичайних хвилин, це припущення. Перша перевірка через ${t.minutes(lookMin)} після накладання.`,
      "roots-wait": ({ foil, byMin, others }) =>
        `Корінь, фольга ${foil}${others > 0 ? ` і ще ${t.whole(others)}` : ""}: руки дійдуть до нього пізніше, ніж задано, щонайбільше на ${t.minutes(byMin)}.`,
      "learnt-pace": "Темп виміряно біля крісла.",
      "heat-left-out": ({ why }) => `${say(heat, why)} Годинник тепла не враховує.`,
      "heat-counted": ({ minutes, low, high }) =>
        `${min(minutes)} тепла рахуються у ${t.spread(t.number(low, 1), t.number(high, 1))} раза швидше, ніж без нього: перевірити, щойно тепло вимкнено.`,
      "no-sheet": ({ mix, product, limitMin }) =>
        `Суміш ${mix}: картки «${product}» немає; за макс. час прийнято ${min(limitMin)}.`,
    },
    alwaysCheck:
      "Перевіряти рано й часто; знімати те, що готове. Ніколи не перевищувати максимального часу виробника.",

    heat,

    clashTitle: (count) =>
      count === 0
        ? "У розкладі немає конфліктів"
        : t.count(count, {
            one: "# конфлікт",
            few: "# конфлікти",
            many: "# конфліктів",
            other: "# конфлікту",
          }),
    noFix: "Partline не має рішення: змініть план.",
    clashes: {
      "over-run": ({ foil, overMin, limitMin, others: more, piece }) =>
        `${one(foil, piece)}: ${min(overMin)} понад максимум ${min(limitMin)}, перш ніж будуть готові всі${others(more)}.`,
      "under-processed": ({ foil, onMin, needsMin, others: more, piece }) =>
        needsMin === null
          ? `${one(foil, piece)}: витримка ${min(onMin)}, готовність не очікується${others(more)}.`
          : `${one(foil, piece)}: витримка ${min(onMin)}, очікувано потрібно ${min(needsMin)}${others(more)}.`,
      "hairline-ahead": ({ waitMin }) =>
        waitMin === null
          ? "Лінія росту була б готова задовго до потилиці й чекала б спільного змивання."
          : `Лінія росту була б готова на ${min(waitMin)} раніше за потилицю й чекала б спільного змивання.`,
      "pot-life": ({ mix, agedMin, potLifeMin }) =>
        `Миску суміші ${mix} використовували б ще через ${min(agedMin)} після змішування; її придатність ${min(potLifeMin)}.`,
      booking: ({ chairMin: { low, mid, high }, bookingMin }) =>
        `Оцінка ${t.minutes(mid)} (${t.spread(t.whole(low), t.whole(high))}); у записі ${t.minutes(bookingMin)}.`,
    },

    fixes,

    search: {
      working: "Пошук рішень",
      stop: "Зупинити",
      stopped: "Пошук зупинено.",
      failed: "Пошук рішень не почався.",
      again: "Шукати знову",
    },
    closest: ({ nowMin, thenMin }, piece) =>
      `Готовність ${without(2, piece)} очікується протягом ${t.minutes(nowMin)}; в іншому порядку або зі слабшим окислювачем спочатку — протягом ${t.minutes(thenMin)}.`,

    setAside: {
      foils,
      another: ({ foils: list, plan }) =>
        `На інший день: ${foils(list)}. Їх немає в суміші, годиннику та друкованій схемі. Як окремий візит вони переходять до «${plan}»; відміна повертає їх сюди, а той план лишає на місці.`,
      /** The plan that they go to. */
      planName: (plan) => `${plan}, інший день`,
      bringBack: "Повернути на сьогодні",
      ownVisit: "Запланувати окремим візитом",
      notMoved: (why) => `Фольги лишаються тут: їхній план не збережено. ${why}`,
      moved: (plan) => `Фольги на інший день тепер у «${plan}», у списку планів.`,
      open: "Відкрити той план",
      notOpened: (why) => `Той план не відкрився: ${why}`,
      fresh: (list) => `Свіжа миска: ${foils(list)}.`,
      usualBowls: "Розподілити миски як звичайно",
      damp: "Волосся в кріслі не сушать.",
      dry: "Усе ж сушити",
    },
  }
}
