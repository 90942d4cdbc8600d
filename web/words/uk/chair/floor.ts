import type { ChairWords } from "../../en/chair/chair"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { foilCount } from "../placement/counted"
import { buttons } from "./buttons"
import { foilsWords } from "./calls"

/** The service while it goes on: what is next, what is on, and what is done with each foil. */
export const floor = (t: Tools): ChairWords["floor"] => ({
  next: "Далі",
  nextFoil: (piece) => (piece === "panel" ? "Наступна панель" : "Наступна фольга"),
  allOn: (piece) =>
    ({
      foil: "Усі фольги накладено.",
      panel: "Усі панелі нанесено.",
      both: "Усі фольги й панелі накладено.",
    })[piece],
  what: ({ kind, place, foils }) =>
    foils === 1 ? `${t.capital(kind)}, ${place}` : `${t.capital(kind)} (${foilCount(t, foils)}), ${place}`,
  mix: (letter) => `суміш ${letter}`,
  now: "Зараз",
  atMinute: (min) => `На хвилині ${t.whole(min)}`,
  isOn: (foil, piece) => (piece === "panel" ? `Панель ${foil} накладено` : `Фольгу ${foil} накладено`),
  by: (who) => `виконує: ${who}`,
  colourist: "колорист",
  assistant: "асистент",
  whoTaps: "Хто торкається",
  wentOnEarlier: buttons.wentOnEarlier,
  lane: (who) => t.capital(who),
  laneDone: "Цей бік накладено повністю.",
  otherFoil: (piece) =>
    ({ foil: "Спочатку інша фольга", panel: "Спочатку інша панель", both: "Спочатку інше" })[piece],

  onNow: "На волоссі",
  foilsOn: (piece) =>
    ({ foil: "Фольги на волоссі", panel: "Панелі на волоссі", both: "Фольги й панелі на волоссі" })[piece],
  noneOn: (piece) =>
    ({
      foil: "Фольг на волоссі немає.",
      panel: "Панелей на волоссі немає.",
      both: "На волоссі нічого немає.",
    })[piece],
  foil: (piece) => t.capital(pieces(t).word(1, piece)),
  foilName: (foil, piece) => t.capital(pieces(t).names([foil], piece)),
  foilNames: (foils, piece) => foilsWords(t, foils, piece),
  minutes: "хв",
  offIn: (ms) => `за планом зняти через ${t.clock(ms)}`,
  offOver: (ms) => `за планом зняти ${t.clock(ms)} тому`,
  offStop: "зняти зараз",
  rootsToCome: "корінь ще попереду",
  rootsOn: "На корінь нанесено",
  rootsWentOnEarlier: "Корінь нанесено раніше",
  offNow: (limitMin) => `макс. ${t.whole(limitMin)}: зняти зараз`,
  countedFromEarliest: "рахується від найранішого",

  tapFoil: (piece) =>
    ({
      foil: "Торкніться фольги: перевірено, знято, оновлено.",
      panel: "Торкніться панелі: перевірено, знято, оновлено.",
      both: "Торкніться фольги чи панелі: перевірено, знято, оновлено.",
    })[piece],
  burning: "Пече",
  checked: "Перевірено",
  off: buttons.off,
  reCoated: "Оновлено",

  mixNow: (mix) => `Змішати зараз: суміш ${mix}`,
  bowlFor: ({ bowl, of }) => `миска ${bowl} з ${of}, на хвилину`,
  rinseNow: buttons.rinseNow,
  allOfThem: (count) => (count === 1 ? "ту, що на волоссі" : `усі на волоссі: ${t.whole(count)}`),
  notReady: (foils, piece) =>
    `${foilsWords(t, foils, piece)}: запланований час ще не настав. Усе одно змити?`,
  rinseAll: "Змити все",
  notYet: "Ще ні",
  end: "Завершити процедуру",
  tonerOn: buttons.tonerOn,
  tonerChecked: "Перевірено",
  tonerOff: buttons.tonerOff,
  tonerPlan: ({ product, minutes }) =>
    product === null ? `${t.minutes(minutes)}; виберіть тонер` : `${product}, ${t.minutes(minutes)}`,
  tonerTime: ({ onMs, plannedMin }) => `${t.clock(onMs)} з ${t.minutes(plannedMin)}`,
  tonerDone: "змито",
  skipToners: "Без тонера",
  after: "Після змивання",
  heatOn: buttons.heatOn,
  heatFor: (minutes) => `${t.minutes(minutes)}, потім перевірити`,
  heatOff: "Тепло вимкнено",
  thenCheck: "потім перевірити й дати охолонути",

  outlook: ({ lastOnMin, rinseMin }, piece) =>
    `За нинішнім темпом: ${{ foil: "остання фольга", panel: "остання панель", both: "остання" }[piece]} на хвилині ${t.whole(lastOnMin)}, усе знято на хвилині ${t.whole(rinseMin)}.`,

  again: "Почати ще одну процедуру за планом",
  weigh: {
    title: "Зважити залишок",
    bowl: ({ bowl, mix }) => `Миска ${bowl}, суміш ${mix}`,
    made: ({ lightenerG, developerG }) => `змішано ${t.gramsNumber(lightenerG)} + ${t.grams(developerG)}`,
    left: "Залишок",
    used: (grams) => `використано ${t.grams(grams)}`,
  },
  nextVisit: {
    title: "Наступний візит",
    plan: "Запланувати візит",
    when: ({ from, to }) => `Від ${t.date(from)} до ${t.date(to)}.`,
    test: (day) => `Шкірний тест нанести до ${t.date(day)}.`,
  },

  check: {
    seen: (name) => `${name}: що видно`,
    level: (name) => `${name}: видимий рівень`,
    darker: "На пів рівня темніше",
    lighter: "На пів рівня світліше",
    stretch: "Розтяг",
    stretches: { ok: "Добре", soft: "Мляве", stop: "Стоп" },
    scalp: "Шкіра голови",
    comforts: { ok: "Добре", warm: "Тепло", burning: "Пече" },
    product: "Засіб",
    moist: "Вологий",
    dry: "Сухий",
    save: "Зберегти перевірку",
    notNow: "Не зараз",
  },
})
