import type { OfflineWords } from "../en/offline"
import type { Tools } from "../tools"

/** How many plans and techniques of a backup there are, by what becomes of them here. */
type BackupFound = {
  added: number
  beside: number
  same: number
  unread: number
  techniques: number
  cards: number
}

/** The app on this device, the plans kept in it, and newer versions. */
export const offline = (t: Tools): OfflineWords => ({
  done: {},
  update: {
    ready: "Є новіша версія Partline.",
    load: "Завантажити",
    later: "Пізніше",
    refused: "Не зараз: інше вікно працює біля крісла або зміну ще не збережено.",
  },
  kept: {
    title: "На цьому пристрої",
    unknown:
      "Цей браузер зберігає плани, але не сам Partline: він відкривається, лише поки доступна його адреса.",
    keeping: "Partline копіюється на цей пристрій, щоб відкриватися без мережі.",
    kept: "Partline відкривається без мережі.",
    failed:
      "Partline не вдалося скопіювати на цей пристрій: він відкривається, лише поки доступна його адреса.",
  },
  persistence: {
    unknown: "Цей браузер не повідомляє, чи береже плани, коли бракує місця.",
    granted: "Цей браузер береже плани, коли бракує місця.",
    refused: "Цей браузер може видалити плани, коли бракує місця або коли ним давно не користувалися.",
    ask: "Попросити берегти їх",
  },
  /** All that this browser keeps, in one file. */
  backup: {
    title: "Резервна копія",
    none: "З цього браузера ще не збережено жодної резервної копії.",
    save: "Зберегти копію",
    open: "Відкрити копію…",
    file: "Файл резервної копії",
    holds:
      "Один файл з усіма планами, картками, техніками та даними вашого салону. У ньому всі відповіді клієнтів про здоров’я, і він не закритий: тримайте його там, де прочитати зможете лише ви. Послуги, що триває в кріслі, у ньому немає.",
    /** What is in a backup that was opened, before it is taken in. */
    found: ({ added, beside, same, unread, techniques, cards }: BackupFound) =>
      [
        `Нових планів: ${t.whole(added)}.`,
        ...(same > 0 ? [`Уже є тут: ${t.whole(same)}.`] : []),
        ...(beside > 0 ? [`Відрізняються від тутешніх і стануть поруч: ${t.whole(beside)}.`] : []),
        ...(unread > 0 ? [`Не читаються і будуть відкладені: ${t.whole(unread)}.`] : []),
        `Нових технік: ${t.whole(techniques)}.`,
        ...(cards > 0 ? [`Нових карток: ${t.whole(cards)}.`] : []),
        "Нічого з того, що є тут, не буде замінено.",
      ].join(" "),
    takeIn: "Додати сюди",
    restored: "Резервну копію додано.",
    today: "Остання резервна копія — сьогоднішня.",
    days: ({ days }) =>
      t.count(days, {
        one: "Останній резервній копії # день.",
        few: "Останній резервній копії # дні.",
        many: "Останній резервній копії # днів.",
        other: "Останній резервній копії # дня.",
      }),
  },
  licences: "Ліцензії",
})
