import type { ChairWords } from "../../en/chair/chair"
import type { Tools } from "../../tools"
import { pieceAsObject, pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { calls, toners } from "./calls"
import { emergencies } from "./emergencies"
import { floor } from "./floor"

export const chair = (t: Tools): ChairWords => ({
  title: "Біля крісла",

  done: {
    "keep-service": "Збереження процедури",
    "keep-alarm": "Запис про те, що пішло не так",
    "weigh-left": "Вага залишку в мисці",
  },

  start: {
    ahead: ({ foils, piece, bowls, span }) =>
      `${pieces(t).count(foils, piece)}, ${t.count(bowls, { one: "# миска", few: "# миски", many: "# мисок", other: "# миски" })}, у кріслі ${span}.`,
    begin: "Запустити годинник",
    clock: (piece) =>
      ({
        foil: "Годинник іде далі й після перезавантаження чи сну. Торкніться кожної фольги, щойно засіб уперше торкнеться волосся.",
        panel:
          "Годинник іде далі й після перезавантаження чи сну. Торкніться кожної панелі, щойно засіб уперше торкнеться волосся.",
        both: "Годинник іде далі й після перезавантаження чи сну. Торкніться кожної фольги й панелі, щойно засіб уперше торкнеться волосся.",
      })[piece],
    reach: "Межа — максимальний час виробника. Доки засіб на волоссі, будьте поруч із клієнтом.",
  },

  device: {
    "no-vibration": "Цей пристрій не вібрує: залиште звук увімкненим.",
    "no-sound": "Цей пристрій тут без звуку: тримайте його там, де відчуєте вібрацію або побачите.",
    neither: "Цей пристрій тут без звуку й вібрації: тримайте екран перед очима.",
    "may-sleep": "Екран цього пристрою може згаснути: увімкніть, щоб він світився всю процедуру.",
  },

  bar: {
    leave: "Вийти",
    alarmsStay: "сигнали залишаються",
    time: "Час процедури",
    clock: t.clock,
    undo: buttons.undo,
    alarm: "Щось не так",
    notKept: (why) => `На цьому пристрої не збережено: ${why}`,
    service: "Триває процедура",
    nothingOn: (piece) =>
      ({
        foil: "Фольг на волоссі немає",
        panel: "Панелей на волоссі немає",
        both: "На волоссі нічого немає",
      })[piece],
    inOtherWindow: "в іншому вікні",
    toChair: "До крісла",
  },

  elsewhere: {
    otherPlan:
      "У цьому вікні триває процедура іншого плану. Щоб вести обидві, відкрийте цей план у другому вікні.",
    toThat: "До тієї процедури",
    controlled: "Цією процедурою керують в іншому вікні. Тут її можна спостерігати.",
    takeOver: buttons.takeOver,
    notOpened: (why) => `План тієї процедури не відкрився: ${why}`,
  },

  refusals: {
    "changed-in-another-window":
      "Інше вікно вже повело цю процедуру далі. Перевірте, що воно показує, і торкніться знову.",
    "held-in-another-window": `Цією процедурою керує інше вікно. Спочатку торкніться «${buttons.takeOver}».`,
    "nothing-to-undo": "Немає дотику, який можна відмінити.",
    "no-such-foil": ({ piece }) =>
      `${piece === "panel" ? "Такої панелі" : "Такої фольги"} в цій процедурі немає.`,
    "off-since": ({ foil, atMin, piece }) =>
      `${t.capital(pieceAsObject(piece))} ${foil} знято на хвилині ${t.number(atMin, 1)}.`,
    "on-since": ({ foil, atMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} на волоссі з хвилини ${t.number(atMin, 1)}; її час іде звідти.`,
    "no-later-roots": ({ foil, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))}: кореня, який наносять пізніше, немає.`,
    "roots-on-since": ({ foil, atMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))}: на корені з хвилини ${t.number(atMin, 1)}; його час іде звідти.`,
    "never-on": ({ foil, piece }) =>
      `${t.capital(pieceAsObject(piece))} ${foil} не позначено як накладену, тож її не зняти. Виберіть її і спочатку торкніться «${buttons.wentOnEarlier}».`,
    "heat-never-on": `«${buttons.heatOn}» не натискали, тож тепло не прибрати.`,
    "no-heat-planned": "Тепла не заплановано.",
    "heat-once": ({ state, atMin }) =>
      state === "on"
        ? `Тепло увімкнено з хвилини ${t.number(atMin, 1)}. Його застосовують один раз.`
        : `Тепло вимкнено з хвилини ${t.number(atMin, 1)}. Його застосовують один раз.`,
    "toner-over": ({ zone }) => `${toners[zone]}: уже змито.`,
    "toner-on-since": ({ zone, atMin }) =>
      `${toners[zone]}: на волоссі з хвилини ${t.number(atMin, 1)}; час іде звідти.`,
    "toner-never-on": ({ zone }) =>
      `${toners[zone]}: спочатку торкніться «${buttons.tonerOn(toners[zone])}».`,
    "second-tap": "Другий дотик у тому самому місці за секунду: не зараховано.",
  },

  notes: {
    "counts-from-earliest": ({ foil, fromMin, piece }) =>
      `${t.capital(pieceAsObject(piece))} ${foil} не позначено як накладену; її час рахується з хвилини ${t.number(fromMin, 1)}, найранішої можливої.`,
    "counts-from-now": ({ foil, fromMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} рахується відтепер. Якщо її накладено раніше, торкніться «${buttons.undo}», потім «${buttons.wentOnEarlier}»: тоді час піде з хвилини ${t.number(fromMin, 1)}.`,
    "in-words": ({ words }) => words,
  },

  clockNotes: {
    "clock-set-back": ({ byMs }) =>
      `Годинник пристрою переведено назад (${t.duration(byMs)}). Годинник процедури йде далі.`,
    "slept-or-set-forward": ({ byMs }) =>
      `Пристрій спав або його годинник переведено вперед (${t.duration(byMs)}). Рахується довший час.`,
    "set-back-while-closed": ({ byMs, piece }) =>
      `Поки сторінку було закрито, годинник пристрою переведено назад (щонайменше ${t.duration(byMs)}). Перевірте зараз кожну ${pieceAsObject(piece)}: вона могла бути на волоссі довше, ніж показано.`,
    "in-words": ({ words }) => words,
  },

  stillOn: (foils, piece) =>
    foils.length === 1
      ? `${t.capital(pieces(t).names(foils, piece))} ще на волоссі. Спочатку торкніться «${buttons.off}» або «${buttons.rinseNow}».`
      : `${t.capital(pieces(t).names(foils, piece))} ще на волоссі. Спочатку торкніться «${buttons.off}» або «${buttons.rinseNow}».`,
  tonerStillOn: (zones) =>
    `${t.and(zones.map((zone) => toners[zone]))}: ще на волоссі. Спочатку торкніться «${buttons.tonerOff}».`,

  calls: calls(t),
  floor: floor(t),
  emergencies: emergencies(t),
})
