import type { SectionNameCode } from "../../core/document/sectionNameCode"
import type { comparing as english } from "../en/comparing"
import { say } from "../say"

/** A learner's plan held against the model's. */
export const comparing: typeof english = (t, common) => {
  const named = (sections: readonly SectionNameCode[]) =>
    t.and(sections.map((each) => say<SectionNameCode>(common.sectionName, each)))
  const mm = (by: number) => t.told.mm(Math.abs(by), 1)
  const toward = {
    nape: "уздовж проділу до потилиці",
    front: "уздовж проділу до середини чола",
    left: "уздовж проділу до лівого боку клієнта",
    right: "уздовж проділу до правого боку клієнта",
  }
  return {
    done: {},
    criteria: {
      side: "Бік голови",
      hairline: "Відстань від лінії росту",
      back: "Місце проділу",
      along: "Місце вздовж проділу",
      angle: "Кут",
      length: "Довжина",
      depth: "Глибина",
      start: "Початок засобу",
      taken: "Звідки взято",
      kind: "Вид",
      order: "Порядок",
    },
    differs: {
      "other-side": "зроблено на іншому боці голови",
      "from-hairline": ({ byMm }) =>
        byMm > 0 ? `на ${mm(byMm)} задалеко за лінією росту` : `на ${mm(byMm)} заблизько до лінії росту`,
      "moved-over": ({ byMm }) => `проділ на ${mm(byMm)} надто ${byMm > 0 ? "позаду" : "попереду"}`,
      slid: ({ byMm, toward: way }) => `зсунуто на ${mm(byMm)} ${way ? toward[way] : "уздовж проділу"}`,
      turned: ({ byDeg }) => `кут відхилено на ${t.number(byDeg, 0)}°`,
      longer: ({ byShare }) => `на ${t.percent(Math.abs(byShare))} ${byShare > 0 ? "задовге" : "закоротке"}`,
      deeper: ({ byMm }) => `на ${mm(byMm)} ${byMm > 0 ? "заглибоке" : "замілке"}`,
      starts: ({ byMm }) =>
        `засіб починається на ${mm(byMm)} ${byMm > 0 ? "задалеко від шкіри" : "заблизько до шкіри"}`,
      "wrong-band": ({ model }) =>
        `взято не з того боку проділу: має бути ${model === "front" ? "спереду" : "ззаду"}`,
      "other-kind": ({ model, learner }) => `${common.kinds[learner]} замість: ${common.kinds[model]}`,
      "out-of-order": ({ model, learner }) =>
        `порядок роботи: зроблено на місці ${t.whole(learner)}, має бути ${t.whole(model)}`,
    },
    within: "у межах допуску",
    missing: "бракує",
    whole: {
      "laid-anew": "Зразок накладено на цю голову за його відстанями від лінії росту.",
      "no-room": ({ sections }) =>
        t.count(sections, {
          one: "# пасмо зразка не має місця на цій голові, його не вимагали.",
          few: "# пасма зразка не мають місця на цій голові, їх не вимагали.",
          many: "# пасом зразка не мають місця на цій голові, їх не вимагали.",
          other: "# пасма зразка не мають місця на цій голові, їх не вимагали.",
        }),
      mirrored: "Зроблено дзеркально: порівняно з іншим боком зразка.",
      matched: ({ matched, of }) => `Знайдено ${t.whole(matched)} із ${t.whole(of)} пасом зразка.`,
      missing: ({ sections }) => `Бракує, за номерами зразка: ${named(sections)}.`,
      extra: ({ sections }) => `Немає у зразку: ${named(sections)}.`,
    },
    sheet: {
      about: "Аркуш оцінювання",
      assumed: "Допуски є припущеннями, їх визначає той, хто оцінює. Позначте кожен крок за тим, що бачили.",
      step: "Крок",
      unaided: "Самостійно",
      withHelp: "З допомогою",
      notYet: "Ще ні",
      measured: "Виміряно на плані",
      criterion: "Критерій",
      tolerance: "Допуск",
      met: "Виконано",
      metOf: (met, of) => `${t.whole(met)} з ${t.whole(of)}`,
      byCriteria: "За критеріями",
      steps: "За кроками",
      whole: "Загалом",
      learner: "Учень",
      assessor: "Оцінює",
      date: "Дата",
      remarks: "Зауваження",
      signature: "Підпис",
    },
  }
}
