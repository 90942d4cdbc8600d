import type { Question, StrandPart } from "../../../core/document/consultation"
import type { CautionsWords } from "../../en/cautions/cautions"
import { fullStop } from "../../fullStop"
import type { Tools } from "../../tools"
import { deciders, sources } from "./authority"
import { clearanceWords } from "./clearanceWords"
import { alertTestFaults, clientCautions } from "./clientCautions"
import { mixCautions } from "./mixCautions"
import { notAskedWords, notKnownWords } from "./notKnownWords"
import { publicWords } from "./publicWords"
import { ruleNames } from "./ruleNames"

/** What this chapter says in the words of others: zones and parts, names of mixes, questions. */
type Shared = {
  mix(letter: string): string
  strandParts: Readonly<Record<StrandPart, string>>
  questions: Readonly<Record<Question, string>>
}

export const cautions = (t: Tools, shared: Shared): CautionsWords => {
  const mixName = (id: string) => t.capital(tonerNames[id] ?? shared.mix(id))
  return {
    done: {
      override: "Письмовий обхід заборони",
      "undo-override": "Відміна обходу заборони",
      "add-letter": "Лист лікаря",
      "remove-letter": "Вилучення листа лікаря",
      "ask-aloud": "Відповідь «ні» на запитане вголос",
    },
    rules: ruleNames,
    held: (why) => `Не змішувати: ${why}`,
    why: { ...clientCautions(t), ...mixCautions(t, mixName) },
    testFaults: alertTestFaults(t),
    decides: deciders,
    sources,
    authority: (decides, source) => `Хто вирішує: ${deciders[decides]}. Джерело: ${sources[source]}.`,
    panel: {
      cautions: (count) =>
        t.count(count, {
          one: "# застереження",
          few: "# застереження",
          many: "# застережень",
          other: "# застереження",
        }),
      notKnown: (count) => `Ще невідомо: ${t.whole(count)}`,
      ways: {
        plan: "Цю заборону обійти не можна. Змініть план або внесіть те, що змінилося.",
        letter: "Цю заборону обійти не можна. Змініть план або внесіть лист лікаря клієнта.",
      },
      letter: "Внести лист лікаря",
      letterFrom: "Лікар або клініка",
      letterDated: "Дата листа",
      saveLetter: "Зберегти лист",
      letterWanting: "Укажіть, хто написав лист, і його дату: сьогодні або раніше.",
      answered: (from, dated) => `Лист: ${from}, ${t.date(dated)}.`,
      removeLetter: "Прибрати лист",
      toAnswer: "До відповіді",
      showNotAsked: "Чого не запитано",
      override: "Обійти письмово",
      overrideThis: "Обійти цю заборону",
      printed: "Причина й ваше ім’я друкуються на схемі, де їх можуть прочитати інші. Не називайте хвороби.",
      reason: "Причина",
      by: "Ваше ім’я",
      wanting: "Спочатку введіть причину та своє ім’я.",
      overridden: (by, reason) => `Заборону обійдено (${by}): ${reason}`,
      wasOverridden: ({ on, by, reason }) =>
        on
          ? `Заборону обійдено ${t.date(on)} (${by}): ${fullStop(reason)} Запитати знову.`
          : `Заборону обійдено (${by}), для якого візиту — невідомо: ${fullStop(reason)} Запитати знову.`,
      undo: "Відмінити обхід",
      doNotMix: "Не змішувати. Спочатку розв’яжіть заборону вище.",
    },
    notKnown: notKnownWords(t, shared.strandParts),
    notAsked: notAskedWords(t, shared),
    clearance: clearanceWords(t),
    onSheet: publicWords(t, mixName),
  }
}

/** What the toners go by, beside mixes with a letter. */
const tonerNames: Readonly<Record<string, string>> = { toner: "тонер", "root-shade": "відтінок для кореня" }
