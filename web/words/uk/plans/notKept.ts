import type { KeptThing, NotKept } from "../../../core/fields/notKept"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { problems } from "../problems/problems"

/** Why a thing could not be kept in the browser, and what to do. */
export const notKept = (t: Tools): Sentences<NotKept> => ({
  "changed-elsewhere":
    "Цей план змінено в іншій вкладці чи вікні. Нічого не перезаписано: збережіть свій як копію або відкрийте той знову.",
  "removed-elsewhere":
    "Цей план видалено в іншій вкладці чи вікні. Збережіть свій як копію, якщо він ще потрібен.",
  "card-changed-elsewhere":
    "Цю картку змінено в іншій вкладці чи вікні. Нічого не перезаписано: її показано такою, якою вона є зараз. Внесіть свою зміну ще раз.",
  "merged-too-long": "Разом ці дві картки довші, ніж може бути одна. Спочатку скоротіть нотатку.",
  "service-running": "Біля крісла триває процедура за цим планом. Завершіть її, перш ніж видаляти план.",
  blocked: ({ what }) =>
    `Відкрито інше вікно зі старішим Partline. Закрийте його або збережіть ${things[what]} у файл.`,
  full: ({ what }) =>
    `Сховище браузера заповнене. Збережіть ${things[what]} у файл, потім видаліть плани, які більше не потрібні.`,
  "newer-shelf": ({ what }) =>
    `Сховище цього браузера використав новіший Partline. Збережіть ${things[what]} у файл і перезавантажте сторінку.`,
  "private-window": ({ what }) =>
    `Приватні вікна не зберігають. Збережіть ${things[what]} у файл, перш ніж закрити вікно.`,
  "refused-by-browser": ({ what, error }) =>
    error
      ? `Браузер не зміг зберегти ${things[what]} (${error}). Збережіть у файл і перезавантажте сторінку.`
      : `Браузер не зміг зберегти ${things[what]}. Збережіть у файл і перезавантажте сторінку.`,
  "not-in-order": ({ what, problem }) =>
    `Не вдалося зберегти ${things[what]}: збережене не прочиталося б знову. ${problems(t).sentence(problem)}`,
  unreadable: ({ problem }) => problems(t).sentence(problem),
  "salon-unreadable":
    "Частина збережених даних салону не читається. За наступної зміни її буде відкладено; решта залишиться.",
  "keeper-missing":
    "Частина Partline, яка зберігає, не завантажилася. Збережіть план у файл, потім перезавантажте сторінку.",
})

/** As the object of "зберегти". */
const things: Record<KeptThing, string> = {
  plan: "план",
  technique: "техніку",
  salon: "дані салону",
  service: "процедуру",
  card: "картку",
}
