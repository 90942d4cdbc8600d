import { visitLimits } from "../../../presets/timing/visitLimits"
import type { ComesFor } from "../../core/calendar/daysToCome"
import { coatLetters } from "../../core/placement/coatCodes"
import type { CardsWords } from "../en/cards"
import type { Tools } from "../tools"
import { pieces } from "./common/pieces"

/** The client over time: cards, the visit before, and what has grown since. */
export const cards = (t: Tools): CardsWords => ({
  done: {
    "put-on-card": "План на картку",
    regrow: "Вибір для відрослого",
    "propose-regrowth": "Пропозиція для відрослого",
    "measure-regrowth": "Вимірювання відрослого",
  },
  title: "Клієнти",
  open: "Клієнти…",
  find: "Знайти клієнта",
  order: "Упорядкувати за",
  orders: { name: "Ім’я", last: "Останній візит", due: "Наступний візит" },
  newName: "Ініціали або ім’я",
  make: "Нова картка",
  none: "Карток ще немає. Картки лишаються в цьому браузері.",
  nothingFound: "Картку не знайдено.",
  more: (count) =>
    t.count(count, {
      one: "Показати ще #",
      few: "Показати ще #",
      many: "Показати ще #",
      other: "Показати ще #",
    }),
  lastDay: (day) => (day === null ? "візитів ще не було" : `останній візит ${t.date(day)}`),
  due: (due) =>
    due.planned
      ? `заплановано на ${t.date(due.day)}`
      : due.from === due.to
        ? `час прийти ${t.date(due.from)}`
        : `час прийти ${t.days(due.from, due.to)}`,
  all: "Усі клієнти",
  unread: (why) => `Цю картку не вдається прочитати, вона лишається як є. ${why}`,
  import: {
    open: "Імпортувати імена…",
    file: "Файл з іменами",
    how: "Текстовий файл або CSV: одне ім’я в рядку або таблиця зі стовпцями ім’я, телефон, нотатка.",
    found: (count) =>
      t.count(count, {
        one: "# нове ім’я",
        few: "# нові імені",
        many: "# нових імен",
        other: "# нового імені",
      }),
    known: (count) => t.count(count, { one: "# вже є", few: "# вже є", many: "# вже є", other: "# вже є" }),
    empty: (count) =>
      t.count(count, {
        one: "# рядок без імені",
        few: "# рядки без імені",
        many: "# рядків без імені",
        other: "# рядка без імені",
      }),
    unfit: (rows) => `рядки, що не вміщаються на картку: ${rows.join(", ")}`,
    left: (count) =>
      t.count(count, {
        one: "# зайвий рядок",
        few: "# зайві рядки",
        many: "# зайвих рядків",
        other: "# зайвого рядка",
      }),
    told: (items) => `${t.capital(t.and(items))}.`,
    take: (count) =>
      t.count(count, {
        one: "Створити # картку",
        few: "Створити # картки",
        many: "Створити # карток",
        other: "Створити # картки",
      }),
    tooLarge: (mostMb) => `Цей файл більший за ${mostMb} МБ. Нічого з нього не прочитано.`,
  },
  card: {
    name: "Ініціали або ім’я",
    phone: "Телефон",
    colour: "Колір картки",
    colours: {
      none: "Немає",
      blue: "Синій",
      orange: "Помаранчевий",
      green: "Зелений",
      purple: "Фіолетовий",
    },
    sheetLanguage: "Мова аркушів для клієнта",
    note: "Нотатки",
    consent: "Клієнт дозволяє зберігати цю картку",
    consentOn: (day) => `Сказано ${t.date(day)}.`,
  },
  allergies: {
    title: "Відомі алергії",
    why: "Вони зупиняють кожен план цього клієнта, доки їх не підтверджено того дня. Сьогоднішня відповідь жодної не знімає.",
    kind: "Алергія на",
    kinds: { dye: "Фарбу або освітлювач", other: "Щось інше", "not-known": "Невідомо" },
    to: "На що",
    since: "Відколи",
    add: "Додати алергію",
    remove: (to) => `Прибрати алергію ${to}`.trim(),
  },
  visits: {
    title: "Візити",
    none: "На цій картці ще немає планів.",
    line: ({ day, served }) =>
      `${day === null ? "без дати" : t.date(day)}, ${served ? "виконано" : "заплановано"}`,
    openNow: "відкрито зараз",
    next: "Наступний візит, сьогодні",
    nextHow: "Новий план на сьогодні з останнього. Те, що належить дневі, запитується знову.",
    putHere: "Покласти відкритий план на цю картку",
    takeOff: "Зняти відкритий план із цієї картки",
  },
  calendar: {
    add: "Додати до календаря",
    holds: "Файл з ініціалами й днями, більше нічого. Про кожен нагадують напередодні.",
    fileName: "dni",
    title: ({ what, isTest }, initials) => {
      const days = {
        visit: "Візит",
        toner: "Час тонувати",
        frame: "Час освітлити обрамлення",
      } satisfies Record<ComesFor, string>
      return [isTest ? "Шкірний тест нанести до сьогодні" : days[what], initials]
        .filter((part) => part !== "")
        .join(": ")
    },
    text: ({ isTest, day, until }) =>
      isTest
        ? `Щонайменше за ${visitLimits.alertTestHours} годин до візиту, а де каже виробник, то й раніше.`
        : until === null
          ? "Те, що належить дневі, запитується знову."
          : `Від ${t.date(day)} до ${t.date(until)}.`,
  },
  merge: {
    title: "Об’єднати з іншою карткою",
    how: "Для двох карток однієї людини. Нотатки, алергії та візити обох лишаються.",
    ask: (one, other) =>
      `${one} і ${other} стануть однією карткою з іменем ${one}. Цього не можна скасувати.`,
    do: "Об’єднати",
  },
  remove: {
    open: "Видалити цю картку",
    ask: (name, plans) =>
      plans === 0
        ? `Картка ${name} зникне назавжди, з нотатками й алергіями.`
        : `Картка ${name} зникне назавжди, з нотатками й алергіями. ${t.count(plans, {
            one: "Її # план лишиться серед планів, без картки.",
            few: "Її # плани лишаться серед планів, без картки.",
            many: "Її # планів лишаться серед планів, без картки.",
            other: "Її # плану лишаться серед планів, без картки.",
          })}`,
    do: "Видалити назавжди",
  },
  rights: {
    title: "Що зберігається про цього клієнта",
    saveFile: "Зберегти все про цього клієнта",
    savePage: "Зберегти як сторінку для читання",
    holds:
      "Обидва містять відповіді про здоров’я і не закриті. Файл Partline відкриє знову, сторінка — для читання. Послуги, що триває в кріслі, немає в жодному.",
    erase: "Стерти цього клієнта назавжди",
    ask: (name, plans) =>
      plans === 0
        ? `Картку ${name} буде стерто назавжди, з нотатками й алергіями.`
        : `Картку ${name} буде стерто назавжди, з нотатками й алергіями, і ${t.count(plans, {
            one: "її # план з усім, що запитано, зроблено й побачено, також у кошику.",
            few: "її # плани з усім, що запитано, зроблено й побачено, також у кошику.",
            many: "її # планів з усім, що запитано, зроблено й побачено, також у кошику.",
            other: "її # плану з усім, що запитано, зроблено й побачено, також у кошику.",
          })}`,
    stays:
      "Лишаються техніки й грами, вивчені з мисок, без імені. Раніше збережених файлів, аркушів і резервних копій це не торкається: видаліть їх самі. Скасувати це не можна.",
    do: "Стерти назавжди",
    openFile: "Відкрити файл клієнта…",
    file: "Файл клієнта",
    log: {
      title: "Збережені та стерті клієнти",
      none: "Поки немає.",
      line: ({ what, on, plans }) =>
        `${t.date(on)}: одного клієнта ${what === "exported" ? "збережено" : "стерто"}, ${t.count(plans, { one: "# план", few: "# плани", many: "# планів", other: "# плану" })}`,
    },
  },
  retention: {
    title: "Як довго зберігати картки",
    years: "Питати про клієнтів, яких не було",
    never: "Ніколи не питати",
    choice: (years) => t.count(years, { one: "# рік", few: "# роки", many: "# років", other: "# року" }),
    how: "Само нічого не стирається.",
    due: (count, years) =>
      `${t.count(count, { one: "# клієнта", few: "# клієнтів", many: "# клієнтів", other: "# клієнта" })} не було ${t.count(years, { one: "# рік", few: "# роки", many: "# років", other: "# року" })} або довше`,
    line: (since) => `останній план або зміна ${t.date(since)}`,
    stay: "Лишити",
    stayNamed: (name) => `Лишити ${name}`,
  },
  page: {
    about: (day) => `Усе, що зберігається про цього клієнта, станом на ${t.date(day)}`,
    card: "Картка",
    noneSaid: "не запитано",
    visit: (day, plan) => `${t.date(day)}: ${plan}`,
    earlier: (day) => `Зроблено ${t.date(day)}`,
    done: "Зроблено",
    planned: "Заплановано",
    foil: ({ number, coats, minutesOn, level }) =>
      [
        `Фольга ${t.whole(number)}`,
        ...(coats.length === 0 ? [] : [`суміш ${coatLetters(coats)}`]),
        ...(minutesOn === null ? [] : [t.minutes(Math.round(minutesOn))]),
        ...(level === null ? [] : [`рівень ${t.number(level)}`]),
      ].join(", "),
    unread: "План, який не вдалося прочитати",
    unreadHow: "Він стоїть у файлі так, як був записаний.",
    rest: "Малюнок і всі цифри стоять у файлі.",
  },
  here: {
    title: "Картка",
    none: "Цей план не належить жодній картці.",
    choose: "Вибрати картку…",
    show: "Показати картку",
  },
  last: {
    title: (day) => `Останній візит, ${t.date(day)}`,
    reactions: "Що пішло не так",
    alarm: (what) => what,
    burning: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))}: шкіра голови пекла`,
    "stretch-stop": (foil, piece) =>
      `${t.capital(pieces(t).names([foil], piece))}: волосся розтягувалося занадто`,
    limp: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))}: волосся було мляве`,
    formula: "Формула",
    bowl: ({ mix, product, volume, lightenerG, developerG }) =>
      `Суміш ${mix}: ${product} ${t.grams(lightenerG)} + ${t.number(volume)} vol ${t.grams(developerG)}`,
    toner: ({ product, minutes }) =>
      minutes === null ? product : `${product}, ${t.minutes(Math.round(minutes))}`,
    foils: "Фольги",
    foil: "Фольга",
    mix: "Суміш",
    minutesOn: "Хвилин на волоссі",
    level: "Видимий рівень",
    unknown: "невідомо",
    note: "Нотатки",
  },
  regrowth: {
    title: "Відросле",
    grown: ({ growth, weeks }) =>
      `${t.spread(t.whole(growth.lowMm), t.mm(growth.highMm))} за ${t.count(Math.round(weeks), { one: "# тиждень", few: "# тижні", many: "# тижнів", other: "# тижня" })}, за оцінкою`,
    measured: "Відросле, виміряне",
    unit: "мм",
    why: "Виміряйте, якщо можна: волосся може рости повільніше за оцінку. Засіб на освітлене волосся ніде не пропонується.",
    counts: (counts) =>
      `час: ${t.whole(counts.due)}, м’яко: ${t.whole(counts.soft)}, зарано: ${t.whole(counts["too-early"])}`,
    states: { due: "час", soft: "м’яко, лишити", "too-early": "зарано" },
    begins: ({ lowMm, highMm }) => `освітлено від ${t.spread(t.whole(lowMm), t.mm(highMm))} від шкіри голови`,
    foil: (foil, piece) => t.capital(pieces(t).names([foil], piece)),
    actions: {
      root: "Лише корінь",
      behind: "На пів кроку позаду",
      before: "На пів кроку попереду",
      keep: "Як було",
      skip: "Пропустити",
    },
    /** What the picture of a strand shows. */
    key: "Червона лінія: далі без засобу. Заштриховано: освітлено раніше. Широко: засіб цього плану.",
    picture: ({ coat, begins }) =>
      `Одне пасмо: ${coat ? `засіб від ${t.whole(coat.fromMm)} до ${t.mm(coat.toMm)}` : "без засобу"}; освітлено від ${t.spread(t.whole(begins.lowMm), t.mm(begins.highMm))} від шкіри голови.`,
    propose: "Лише корінь, де час; решту пропустити",
    twice: ({ foil, piece, on, fromMm, toMm }) =>
      `${t.capital(pieces(t).names([foil], piece))} покрила б волосся, освітлене ${t.date(on)}, від ${t.whole(fromMm)} до ${t.mm(toMm)} від шкіри голови.`,
  },
})
