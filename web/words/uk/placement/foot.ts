import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { WornFront } from "../../../../geometry/strands/gather"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { sectionCount } from "./counted"

/** What the figures at the foot of the map say. A figure stands before its words. */
export const foot = (t: Tools, { kinds, clientSide, landmark }: CommonWords): PlacementWords["foot"] => {
  const worn: Record<WornParting["kind"] | "unknown", string> = {
    centre: "з проділом посередині",
    side: "з проділом збоку",
    zigzag: "із зигзагоподібним проділом",
    none: "зачесано назад",
    unknown: "проділ посередині (припущення, не вказано)",
  }
  const fronts: Record<WornFront, string> = { cheek: "на щоці", tucked: "за вухом", tied: "зібрано" }
  const toned = {
    cool: "тонування холодне",
    neutral: "тонування нейтральне",
    warm: "тонування тепле",
    none: "до тонера",
  }
  return {
    empty: "Ще нічого не намальовано. Тут будуть волосини, площа під нанесення та грами.",
    totals: "Підсумки",
    inHand: ({ kind, number }) =>
      number === null ? t.capital(kinds[kind]) : `${t.capital(kinds[kind])} ${t.whole(number)}`,
    depth: (mm) => `× ${t.mm(mm, 1)}`,
    behindHairline: (at) => `від лінії росту, ${landmark(at)}`,
    scalp: "шкіри голови",
    hairs: "волосин",
    hairToCoat: "під нанесення",
    product: (range) => `засобу, ${range}`,
    foils: (foils, piece) => pieces(t).count(foils, piece),
    sections: (sections) => sectionCount(t, sections),
    more: "ще",
    estimates: "Оцінки. Миски заплановано за верхньою цифрою.",
    estimatesLess: (less) => `${less}. Миски заплановано за верхньою цифрою.`,
    firstToLast: (piece) =>
      ({
        foil: "від першої до останньої фольги",
        panel: "від першої до останньої панелі",
        both: "від першої до останньої",
      })[piece],
    minuteByMinute: "Похвилинно",
    showHairDown: "Розпущене волосся",
    backToDrawing: "Назад до малюнка",

    fall: {
      label: "Розпущене",
      title: "Ескіз за показниками пігменту",
      calculating: "Обчислення…",
      side: (side) => t.capital(clientSide[side]),
      range: (low, high) => `(від ${t.percent(low)} до ${t.percent(high)})`,
      told: ({ withinCm, heads, kind, front }) =>
        `волосся, видимого спереду в межах ${t.cm(withinCm)} від обличчя, освітлено. ` +
        `Діапазон: ${t.count(heads, {
          one: "# змодельована голова",
          few: "# змодельовані голови",
          many: "# змодельованих голів",
          other: "# змодельованої голови",
        })}. ` +
        `Намальовано сухим і прямим, ${worn[kind]}, спереду ${fronts[front]}, того ж дня. Колір показує тест на пасмі.`,
      /** What is drawn, and how far its colour may be out. */
      drawn: ({ now, aimed, finish }) =>
        `Намальовано від рівня ${t.number(now)} до рівня ${t.number(aimed)}, ${toned[finish ?? "none"]}; зразки — від рівня темніше до рівня світліше.`,
      nowAssumed: (level) => `Поточний рівень не вказано: намальовано як рівень ${t.number(level)}.`,
      aimedAssumed: (level) => `Цільовий рівень не вказано: намальовано як рівень ${t.number(level)}.`,
      front: "Спереду",
      fronts,
      swatches: "Колір, як діапазон",
      weeks: "Тижнів потому",
      weeksOn: ({ weeks, lowMm, highMm }) =>
        weeks === 0
          ? "того ж дня"
          : `${t.count(weeks, { one: "# тиждень", few: "# тижні", many: "# тижнів", other: "# тижня" })}: корені відросли на ${t.spread(t.whole(lowMm), t.whole(highMm))} мм (діапазон)`,
      withToner: "З тонером",
      showToClient: "Показати клієнту",
      backToFigures: "Назад до цифр",
      clientSentence: "Ескіз того, де лежить світло. Колір показує тест на пасмі.",
    },

    minutes: {
      label: "Схема похвилинно",
      slider: "Хвилина на схемі",
      listLabel: (atMin) => `Фольги на хвилині ${t.whole(atMin)}`,
      foil: ({ number, piece, state, onMin }) => {
        const called = t.capital(pieces(t).names([number], piece))
        if (state === "waiting") return `${called}: ще не накладено`
        return state === "on"
          ? `${called}: на волоссі ${t.minutes(onMin)}`
          : `${called}: знято через ${t.minutes(onMin)}`
      },
      keyLabel: "Що означають відтінки: хвилини витримки, а не результат",
      keys: {
        waiting: "ще ні",
        justOn: "щойно",
        half: "половина макс. часу",
        all: "увесь",
        off: "знято",
      },
    },
  }
}
