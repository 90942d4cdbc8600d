import type { Tools } from "../../tools"

/** Units in Cyrillic letters; days without the "р." after the year, whose stop would meet that of the sentence. */
export const unitsInUkrainian = (t: Tools): Tools => ({
  ...t,
  percent: (share) => t.percent(share).replace(/\s?%$/, "\u00a0%"),
  grams: (value) => t.grams(value).replace(/g$/, "г"),
  gramsRange: (range) => t.gramsRange(range).replace(/g$/, "г"),
  mm: (value, decimals) => t.mm(value, decimals).replace(/mm$/, "мм"),
  cm: (value, decimals) => t.cm(value, decimals).replace(/cm$/, "см"),
  area: (cm2) => t.area(cm2).replace(/cm²$/, "см²"),
  told: {
    ...t.told,
    mm: (value, decimals) => t.told.mm(value, decimals).replace("mm", "мм"),
    cm: (value, decimals) => t.told.cm(value, decimals).replace("cm", "см"),
    size: (widthMm, lengthMm) => t.told.size(widthMm, lengthMm).replace("mm", "мм"),
    grams: (value, decimals) => t.told.grams(value, decimals).replace("g", "г"),
    gramsRange: (range) => t.told.gramsRange(range).replace("g", "г"),
  },
  minutes: (value, decimals) => t.minutes(value, decimals).replace(/min$/, "хв"),
  minuteRange: (low, high) => t.minuteRange(low, high).replace(/min$/, "хв"),
  day: (wallMs) => withoutYearMark(t.day(wallMs)),
  dayAndTime: (wallMs) => withoutYearMark(t.dayAndTime(wallMs)),
  date: (iso) => withoutYearMark(t.date(iso)),
  days: (from, to) => withoutYearMark(t.days(from, to)),
})

const withoutYearMark = (said: string) => said.replace(/\s?р\./g, "")
