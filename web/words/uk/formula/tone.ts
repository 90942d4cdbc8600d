import type { Neutraliser, Pigment } from "../../../../presets/formula/pigments"
import type { ToneStrength } from "../../../../presets/formula/tones"
import type { WheelName } from "../../../../presets/formula/toneWheel"
import type { ToneFamily } from "../../../core/tone/tone"
import type { FormulaWords } from "../../en/formula/formula"
import type { Tools } from "../../tools"

/** What is toned with after rinsing. */
export const tone = (t: Tools): FormulaWords["tone"] => ({
  title: "Тонування після змивання",
  rootMelt: "Розтушовка кореня",
  noMelt: "Немає",
  meltedDown: (mm) => `Вниз на ${t.mm(mm)}`,
  toner: "Тонер",
  rootShade: "Відтінок для кореня",
  mixedWith: "Змішати з",
  ratio: "Тонер до окислювача",
  picture:
    "Коло ілюструє слова; це не виміряний колір. Тонер, змішаний з окислювачем, — окисна фарба: спочатку шкірний тест та інструкція виробника.",

  zones: { "root-melt": "Розтушовка кореня", mids: "Довжина", hairline: "Лінія росту" },
  shows: {
    "level-unknown": "Досягнутий рівень ще невідомий: виберіть тонер біля мийки.",
    keep: ({ level, pigment }) =>
      `Рівень ${t.number(level, 1)}, фон освітлення ${pigmentWords[pigment]}; залишити.`,
    neutralise: ({ level, pigment, neutraliser }) =>
      `Рівень ${t.number(level, 1)}, фон освітлення ${pigmentWords[pigment]}; нейтралізує ${neutraliserWords[neutraliser]}.`,
    melt: ({ rootLevel, downMm }) =>
      rootLevel === null
        ? `Відтінок такої ж глибини, як корінь, розтушувати вниз на ${t.mm(downMm)}.`
        : `Відтінок рівня ${t.number(rootLevel, 1)}, розтушувати вниз на ${t.mm(downMm)}.`,
  },
  mix: ({ family, strength }) => {
    if (family === "root-shade") return `Відтінок для кореня: ${strengthWords[strength]}.`
    return family === null
      ? `Тонер: ${strengthWords[strength]}.`
      : `Тонер, ряд «${familyWords[family]}»: ${strengthWords[strength]}.`
  },
  families: familyWords,
  strengths: strengthWords,
  minutes: ({ low, high }) =>
    `Перевіряти з хвилини ${t.whole(low)}; змити не пізніше ніж через ${t.minutes(high)}.`,
  bowl: {
    "toner-alone": ({ product, tonerG, clearG, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })}, на волосся ${t.gramsRange(wantedG)}.`,
    "toner-mixed": ({ product, tonerG, clearG, developerG, developerMl, volume, percent, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })} + ${t.number(developerG, 1)}\u00a0г (${t.number(developerMl)}\u00a0мл) окислювача ${t.number(volume)}\u00a0vol (${t.number(percent, 1)}\u00a0%), на волосся ${t.gramsRange(wantedG)}.`,
  },
  wheel: {
    shows: (name) => `Фон: ${wheelWords[name]}`,
    neutralises: (name) => `Нейтралізує: ${wheelWords[name]}`,
  },
})

const tonerAndClear = (
  t: Tools,
  { product, tonerG, clearG }: { product: string; tonerG: number; clearG: number },
) =>
  clearG > 0
    ? `${t.number(tonerG, 1)}\u00a0г «${product}» + ${t.number(clearG, 1)}\u00a0г його кліру`
    : `${t.number(tonerG, 1)}\u00a0г «${product}»`

const pigmentWords: Record<Pigment, string> = {
  "dark-red-brown": "темний червоно-коричневий",
  "red-brown": "червоно-коричневий",
  "red-orange": "червоно-оранжевий",
  orange: "оранжевий",
  "yellow-orange": "жовто-оранжевий",
  yellow: "жовтий",
  "pale-yellow": "блідо-жовтий",
  "very-pale-yellow": "дуже блідий жовтий",
}

const neutraliserWords: Record<Neutraliser, string> = {
  green: "зелений",
  "blue-green": "синьо-зелений",
  blue: "синій",
  "blue-violet": "синьо-фіолетовий",
  violet: "фіолетовий",
  "soft-violet": "м’який фіолетовий чи перламутр",
}

const familyWords: Record<ToneFamily, string> = {
  ...neutraliserWords,
  gold: "золотистий",
  "root-shade": "відтінок для кореня",
}

const strengthWords: Record<ToneStrength, string> = {
  full: "повна сила",
  half: "половинна сила (розбавити кліром)",
  sheer: "клір або прозорий золотистий, без нейтралізатора",
}

const wheelWords: Record<WheelName, string> = {
  yellow: "жовтий",
  "yellow-orange": "жовто-оранжевий",
  orange: "оранжевий",
  "red-orange": "червоно-оранжевий",
  red: "червоний",
  "red-violet": "червоно-фіолетовий",
  violet: "фіолетовий",
  "blue-violet": "синьо-фіолетовий",
  blue: "синій",
  "blue-green": "синьо-зелений",
  green: "зелений",
  "yellow-green": "жовто-зелений",
}
