import type { ClientWords } from "../../en/client/client"
import type { HairPlaces } from "../../en/client/hair"
import type { Tools } from "../../tools"
import { hairLine, histories, levelNames, porosities, stretches } from "./hair"
import { questions } from "./questions"
import { lookWindow, strandFaults } from "./strandTests"

export const client = (t: Tools, places: HairPlaces): ClientWords => {
  const capitals = <K extends string>(names: Readonly<Record<K, string>>) =>
    Object.fromEntries(Object.entries<string>(names).map(([key, name]) => [key, t.capital(name)])) as Record<
      K,
      string
    >
  const usually = (low: string, high: string, unit: string) => `Зазвичай від ${low} до ${high} ${unit}`
  return {
    title: "Клієнт",
    done: {
      answer: "Відповідь на запитання",
      "confirm-answers": "Підтвердження попередніх відповідей",
      "set-asked-by": "Хто запитує",
      "set-allergy": "Опис алергії",
      "set-henna-date": "Дата татуювання чорною хною",
      "answer-rest": "Відповідь «ні» на решту",
      "clear-answer": "Очищення відповіді",
      "set-age": "Вік",
      "clear-age": "Очищення віку",
      "set-scalp": "Шкіра голови",
      "clear-scalp": "Очищення: шкіра голови",
      "set-level": "Рівень зараз",
      "set-history": "Історія волосся",
      "set-porosity": "Пористість",
      "clear-porosity": "Очищення пористості",
      "set-stretch": "Еластичність",
      "clear-stretch": "Очищення еластичності",
      "set-target": "Цільовий рівень",
      "set-finish": "Кінцевий тон",
      "clear-finish": "Очищення кінцевого тону",
      "set-brightest": "Де найсвітліше",
      "set-root": "Відстань від кореня",
      "set-upkeep": "Тижні між візитами",
      "set-grey": "Сивина",
      "apply-test": "Нанесення шкірного тесту",
      "record-test": "Запис шкірного тесту",
      "remove-test": "Вилучення шкірного тесту",
      "record-strand": "Запис тесту на пасмі",
      "rename-plan": "Нова назва плану",
      "set-day": "Зміна дати",
      "set-initials": "Зміна ініціалів",
      "set-hairline": ({ form }) => `Лінія росту: ${hairlineForms[form].toLocaleLowerCase(t.locale)}`,
      "average-head": "Середня голова",
      "tape-head": "Вимірювання голови стрічкою",
      "caliper-head": "Вимірювання голови циркулем",
      "set-head-size": "Зміна розміру голови",
      "set-density": "Зміна густоти",
      "set-texture": "Зміна товщини волосини",
      "set-length": ({ where }) => `Зміна довжини: ${lengthPlaces[where].toLocaleLowerCase(t.locale)}`,
    },
    caution:
      "Partline планує роботу, але не ставить діагнозів. Тести та інструкція виробника — передусім, а кожна цифра є оцінкою з діапазоном.",
    plan: {
      title: "План",
      name: "Назва плану",
      day: "Дата",
      initials: "Ініціали",
      initialsHint: "Лише ініціали: схема висить там, де її читають інші.",
    },
    consultation: { hide: "Сховати: здоров’я", show: "Показати: здоров’я" },
    steps: {
      ask: "Запитати",
      hair: "Волосся",
      head: "Голова",
      goal: "Побажання клієнта",
      count: (done, of) => `${t.whole(done)} з ${t.whole(of)}`,
    },
    ask: {
      askedBy: "Хто запитав",
      alone: "Запитувати по одному",
      together: "Запитати також",
      inherited: (day) =>
        day === null
          ? "Відповідь іншого дня: торкніться тієї самої відповіді, щоб підтвердити."
          : `Відповідь від ${t.date(day)}: торкніться тієї самої відповіді, щоб підтвердити.`,
      confirm: (count) =>
        t.count(count, {
          one: "Перепитано: # відповідь без змін",
          few: "Перепитано: # відповіді без змін",
          many: "Перепитано: # відповідей без змін",
          other: "Перепитано: # відповіді без змін",
        }),
      allergy: { which: "На що?", when: "Відколи?", how: "Як проявляється?" },
      hennaOn: "Дата татуювання",
      age: "Вік",
      ageNotKnown: "Вік, не запитано",
      years: "років",
      scalp: "Шкіра голови",
      scalps: { calm: "Спокійна", sensitive: "Чутлива", irritated: "Подразнена", broken: "Ушкоджена" },
      rest: (count) => `Усе це запитано: «Ні» на решту (${t.whole(count)})`,
    },
    questions,
    hair: {
      title: "Волосся зараз",
      where: "Де",
      allOver: "Усе волосся",
      zones: capitals(places.zones),
      parts: capitals(places.strandParts),
      along: "Уздовж пасма",
      rootToEnds: "Від кореня до кінців",
      level: "Рівень зараз",
      levelNamed: (legend, level) => `${legend}: ${level}, ${levelNames[level]}`,
      levelNames,
      history: "Історія волосся",
      neverTreated: "Без хім. процедур",
      histories,
      porosity: "Пористість",
      porosities,
      stretch: "Еластичність мокрого волосся",
      stretches,
      line: hairLine(t, places),
    },
    measures: {
      title: "Волосся",
      density: "Густота",
      densityUnit: "на см²",
      densities: { low: "Низька", medium: "Середня", high: "Висока" },
      texture: "Товщина волосини",
      textureUnit: "мкм",
      textures: { fine: "Тонка", medium: "Середня", coarse: "Груба" },
      withFigure: (word, value) => `${word} ${t.number(value)}`,
      length: "Довжина прямо зачесаного",
      lengthPlaces,
      lengthOf: { front: "Довжина спереду", sides: "Довжина з боків", back: "Довжина ззаду" },
      lengths,
      lengthOption: (place, cm) => `${lengths[place]}, ${cm} см`,
      lengthAbove: (place) => `Вище: ${lengths[place].toLocaleLowerCase(t.locale)}`,
      lengthBelow: (place) => `Нижче: ${lengths[place].toLocaleLowerCase(t.locale)}`,
      lengthBetween: (from, to) => `${lengths[from]} – ${lengths[to].toLocaleLowerCase(t.locale)}`,
    },
    goals: {
      title: "Побажання клієнта",
      target: "Цільовий рівень, до тонера",
      finish: "Кінцевий тон",
      finishes: { cool: "Холодний", neutral: "Нейтральний", warm: "Теплий" },
      brightest: "Де найсвітліше",
      root: "Відстань від кореня",
      roots: { tight: "Впритул", standard: "Стандарт", soft: "М’яко" },
      rootOption: (word, mm) => `${word}, ${t.mm(mm)}`,
      upkeep: "Тижні між візитами",
      upkeepOther: "або інше число",
      weeks: "тижнів",
      grey: "Сивина",
      greys: {
        "0": "Немає",
        "0.1": "Десята частина",
        "0.25": "Чверть",
        "0.5": "Половина",
        "0.75": "Більшість",
        "1": "Уся",
      },
    },
    tests: {
      title: "Шкірні тести (на алергію)",
      applyNow: (product) => `Нанести тест зараз: ${product}`,
      orOther: "або інший засіб",
      product: "Засіб для тесту",
      choose: "Вибрати",
      apply: "Нанести тест зараз",
      clear: (readOn) =>
        `Без реакції, оцінено ${t.date(readOn)}. Сьогодні дійсний за строком виробника або салону.`,
      place: "Де на шкірі",
      placeHint: "де вказує виробник",
      applied: "Нанесено",
      result: "Результат",
      results: { unread: "Ще не оцінено", clear: "Без реакції", reacted: "Реакція" },
      readBy: "Хто оцінив",
      readOn: "Коли оцінено",
      changed: "Чи щось відтоді змінилося?",
      validUntil: "Дійсний до (за карткою виробника)",
      remove: "Прибрати",
    },
    strandTests: {
      title: "Тест на пасмі",
      outcomes: { held: "Пройдено", failed: "Не пройдено" },
      others: "Інші засоби",
    },
    head: {
      /** A tape that the two others contradict; it is taken all the same. */
      contradicts: ({ name, byMm }) =>
        `${name}: на ${t.mm(Math.abs(byMm))} ${byMm > 0 ? "більше" : "менше"}, ніж можна чекати за двома іншими. Виміряйте ще раз; доти цей розмір важить менше.`,
      size: "Розмір голови",
      measured: "Виміряно",
      ways: { average: "Середня", tape: "Стрічкою", caliper: "Циркулем" },
      units: "Одиниці",
      unitNames: { metric: "Метричні", inches: "Дюйми" },
      average: (around, over, frontToNape) =>
        `Середня доросла голова: обхват ${around}, через верх ${over}, від лоба до карка ${frontToNape}. Виміряйте клієнта.`,
      hairline: "Лінія росту",
      measures: {
        aroundMm: {
          name: "Обхват",
          hint: (low, high, unit) => `${usually(low, high, unit)}: над бровами й навколо потилиці.`,
        },
        overMm: {
          name: "Через верх",
          hint: (low, high, unit) =>
            `${usually(low, high, unit)}: від переду одного слухового отвору до другого.`,
        },
        frontToNapeMm: {
          name: "Від лоба до карка",
          hint: (low, high, unit) =>
            `${usually(low, high, unit)}: від передньої лінії росту до ямки на карку.`,
        },
        lengthMm: {
          name: "Довжина",
          hint: (low, high, unit) => `${usually(low, high, unit)}: від точки між бровами до потилиці.`,
        },
        breadthMm: {
          name: "Ширина",
          hint: (low, high, unit) => `${usually(low, high, unit)}: у найширшому місці, над вухами.`,
        },
        heightMm: {
          name: "Висота",
          hint: (low, high, unit) =>
            `${usually(low, high, unit)}: від слухового отвору до верху, вертикально.`,
        },
      },
      hairlines: hairlineForms,
      whole: "На цій голові",
      area: "Площа росту волосся",
      hairs: "Усього волосин",
    },
    strandFaults: strandFaults(t),
    lookWindow: lookWindow(t),
  }
}

const lengthPlaces: ClientWords["measures"]["lengthPlaces"] = {
  front: "Спереду",
  sides: "З боків",
  back: "Ззаду",
}

const lengths: ClientWords["measures"]["lengths"] = {
  brow: "Брови",
  ear: "Вухо",
  cheek: "Щока",
  chin: "Підборіддя",
  shoulder: "Плече",
  collarbone: "Ключиця",
  "shoulder blade": "Лопатка",
  "bra line": "Лінія бюстгальтера",
  waist: "Талія",
}

const hairlineForms: ClientWords["head"]["hairlines"] = {
  round: "Округла",
  straight: "Пряма",
  receding: "З виїмками",
  peaked: "З мисиком",
}
