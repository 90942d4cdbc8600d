import type { TimingWords } from "../../en/timing/timing"
import type { Tools } from "../../tools"
import { clashes } from "./clashes"
import { settings } from "./settings"

export const timing = (t: Tools): TimingWords => {
  const found = clashes(t)
  return {
    title: "Час",
    none: "Чому немає годинника",
    toPlacement: "Намалювати першу фольгу",
    toChair: "Почати біля крісла",

    done: {
      ...found.fixes,
      "set-pace": "Зміна темпу",
      "set-hands": "Зміна: хто працює",
      "set-people": "Зміна імен",
      "set-side": "Зміна боку асистента",
      "set-rinse": "Зміна: як знімати фольги",
      "set-lift": "Зміна рівнів",
      "set-booking": "Зміна тривалості запису",
      "set-drying": "Зміна сушіння",
      "set-heat": "Зміна тепла",
      "set-breaks": "Зміна перерв",
      "learn-pace": "Виміряний темп у плані",
      "learn-second-pace": "Виміряний темп асистента",
      "set-strand": "Збереження тесту на пасмі",
      "remove-strand": "Вилучення тесту на пасмі",
      "bring-back": "Повернення фольг з іншого дня",
      "own-visit": "Фольги на інший день — в окремий план",
      "usual-bowls": "Розподіл мисок як звичайно",
      "next-time": "Нотатка на наступний раз",
    },

    figures: {
      lastOn: () => "Остання накладена",
      firstCheck: "Перша перевірка",
      lastOff: () => "Остання знята",
      inChair: "У кріслі",
      minute: (min) => `хвилина ${t.whole(min)}`,
      noCheck: "–",
      span: ({ low, high }) => {
        const [from, to] = [hours(t, low), hours(t, high)]
        return from === to ? from : `від ${from} до ${to}`
      },
    },

    chart: {
      title: "Похвилинно",
      name: "Діаграма візиту; таблиця нижче каже те саме",
      min: "хв",
      break: "перерва",
      firstRests: "перерва колориста",
      secondRests: "перерва асистента",
      heat: "тепло",
      key: ({ limit }) =>
        `Смуга: час витримки. Контур: може бути готово. ${limit}: максимальний час. Пунктир: перевірка. Трикутник: змішати ту миску.`,
      limit: "Червона лінія",
    },

    head: {
      title: "Голова на хвилині",
      slider: "Хвилина візиту",
      views: {
        front: "Спереду",
        right: "Правий бік клієнта",
        left: "Лівий бік клієнта",
        back: "Ззаду",
        top: "Зверху",
      },
      key: "Темніше = довше на волоссі; чорне = максимальний час. Пунктир = ще не накладено. Контур = знято. Показує час, а не результат.",
      onMap: "Показати на великій схемі",
    },

    table: {
      title: (piece) =>
        ({
          foil: "Час для кожної фольги",
          panel: "Час для кожної панелі",
          both: "Час для кожної фольги й панелі",
        })[piece],
      name: (piece) =>
        ({ foil: "Час кожної фольги", panel: "Час кожної панелі", both: "Час кожної фольги й панелі" })[
          piece
        ],
      foil: (piece) => ({ foil: "Фольга", panel: "Панель", both: "Фольга чи панель" })[piece],
      on: "Накл.",
      check: "Перев.",
      ready: "Готова від–до",
      off: "Зняти",
      limit: "Макс. час (зняти до)",
      minutesOn: "Витримка, хв",
      what: ({ kind, place }) => `${t.capital(kind)}, ${place}`,
      none: "–",
      readyRange: ({ low, high }) => {
        if (Number.isFinite(high)) return t.spread(t.whole(low), t.whole(high))
        return Number.isFinite(low) ? `${t.whole(low)} або не вчасно` : "не вчасно"
      },
      minute: t.whole,
    },

    after: {
      title: (piece) =>
        ({
          foil: "Після останньої фольги",
          panel: "Після останньої панелі",
          both: "Після останньої фольги чи панелі",
        })[piece],
      rinse: "Змити",
      detangle: "Розплутати начіс, мокрим, від кінців угору",
      dry: "Висушити",
      toners: {
        "root-melt": "Розтушовка кореня",
        mids: "Тонер, довжина",
        hairline: "Тонер, лінія росту",
      },
      line: ({ what, from, to }) => `${what}: від хвилини ${t.whole(from)} до ${t.whole(to)}`,
    },

    strand: {
      title: "Тест на пасмі",
      testedIn: "Чим перевірено",
      mix: ({ mix, volume }) => `Суміш ${mix}, ${t.number(volume)}\u00a0vol`,
      otherMix: ({ product, volume }) =>
        `Пасмо перевірено з «${product}», ${t.number(volume)}\u00a0vol. Такої суміші зараз немає; про волосся воно все ж свідчить.`,
      before: "Рівень пасма до тесту",
      remove: "Прибрати тест",
      add: "Додати перевірку пасма",
      minutes: "Витримка, хв",
      level: "Видимий рівень",
      removeRow: "Прибрати",
      noCurve: (mix) =>
        `${mix}: картка не вказує освітлення для цього окислювача, тож кривої немає. Перевіряйте пасмо й записуйте.`,
      untilThen: (fault) => `${fault} Доти крива — за карткою.`,
      noGoal: "Введіть цільовий рівень; за ним підуть хвилини перевірок.",
      curve: "Крива",
      curveName: (mix) =>
        `Крива освітлення за хвилинами витримки: ${mix}; що з неї випливає, каже речення вище`,
      key: "Лінія: середнє. Смуга: чотири голови з п’яти. Штрихи: цільовий рівень. Оцінка, ніколи не обіцянка: вирішує волосся.",
      dots: "Точки: пасмо.",
      borrowed: "За пасмом з іншої суміші: волосся те саме.",
      misfit: "Пасмо погано лягає на криву: перевіряйте частіше.",
      minutesOn: "хвилини витримки",
    },

    actual: {
      title: "За планом і фактично",
      when: (wallMs) => `${t.dayAndTime(wallMs)}. Хвилини рахуються від першого проділу.`,
      name: (piece) =>
        ({
          foil: "Час кожної фольги за планом і фактично",
          panel: "Час кожної панелі за планом і фактично",
          both: "Час кожної фольги й панелі за планом і фактично",
        })[piece],
      foil: (piece) => ({ foil: "Фольга", panel: "Панель", both: "Фольга чи панель" })[piece],
      onPlanned: "Накл., план",
      onActual: "Накл., факт",
      minutesPlanned: "Витримка, план",
      minutesActual: "Витримка, факт",
      notOn: "не накладено",
      none: "–",
      minute: t.whole,
    },

    lessons: {
      title: "Темп біля крісла",
      name: "Хвилини на фольгу, за особою й видом",
      who: "Хто",
      timed: "Фольг із часом",
      kind: (kind) => `${t.capital(kind)}, хв`,
      noName: "Без імені",
      foils: ({ foils, services }) =>
        `${t.whole(foils)} за ${t.count(services, {
          one: "# процедуру",
          few: "# процедури",
          many: "# процедур",
          other: "# процедури",
        })}`,
      range: ({ low, high }) => t.spread(t.fixed(low, 1), t.fixed(high, 1)),
      none: "–",
      planWith: (person) => (person ? `У план цей темп: ${person}` : "У план цей темп"),
      asAssistant: (person) => (person ? `Асистент: ${person}` : "Асистент у цьому темпі"),
    },

    alarms: {
      title: "Що пішло не так",
      line: ({ wallMs, what }) => `${t.dayAndTime(wallMs)}: ${what}`,
    },

    nextTime: {
      title: "Наступного разу",
      where: "Друкується на картці процедури, не на схемі.",
    },

    command: {
      lift: "Час готовності — оцінка за освітленням у картці засобу. Тест на пасмі її звужує; перевіряти й знімати те, що готове.",
      noLift: "Без --from і --to час готовності типовий (припущення). Перевіряти й знімати те, що готове.",
    },

    assumedTitle: "Що припущено",
    ...found,
    settings: settings(t),
  }
}

function hours(t: Tools, min: number): string {
  const rounded = Math.round(min / 5) * 5
  const [whole, rest] = [Math.floor(rounded / 60), rounded % 60]
  if (whole === 0) return t.minutes(rest)
  return rest === 0 ? `${whole}\u00a0год` : `${whole}\u00a0год\u00a0${rest}`
}
