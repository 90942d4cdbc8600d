import type { MixCode, SheetGap } from "../../../core/cautions/rules/cautionCode"
import type { CautionsWords } from "../../en/cautions/cautions"
import type { Tools } from "../../tools"

/** What was found of a mix. */
export function mixCautions(
  t: Tools,
  named: (mix: string) => string,
): Pick<CautionsWords["why"], MixCode["code"]> {
  const gaps: Record<SheetGap, string> = {
    "longest-time": "максимальний час",
    "on-scalp": "чи можна на шкіру голови",
    "alert-test": "чи потрібен шкірний тест",
    "pot-life": "придатність суміші",
  }
  return {
    "over-legal-limit": ({ mix, onHeadPercent, mostPercent }) =>
      `${named(mix)}: на голові було б ${t.number(onHeadPercent, 1)}\u00a0% перекису; закон дозволяє ${mostPercent}\u00a0% у ЄС і Великій Британії. Взяти слабший окислювач.`,
    "hairline-strength": ({ mix, volume, mostVolume }) =>
      `${named(mix)}: ${t.number(volume)}\u00a0vol на лінії росту; найбільше там беруть ${mostVolume}\u00a0vol (поширена практика). Взяти ${mostVolume}\u00a0vol або окрему суміш.`,
    "strong-developer": ({ mix, volume, usualMostVolume }) =>
      `${named(mix)}: ${t.number(volume)}\u00a0vol, понад звичайний максимум ${usualMostVolume}. Два м’якші візити легші для волосся.`,
    "developer-not-on-sheet": ({ mix, product, volume, listed }) =>
      `${named(mix)}: «${product}» не призначено для ${t.number(volume)}\u00a0vol; в інструкції вказано ${t.or(listed.map((each) => t.number(each)))}\u00a0vol.`,
    "ratio-not-on-sheet": ({ mix, product, parts, low, high }) =>
      low === high
        ? `${named(mix)}: 1 : ${t.number(parts)}; в інструкції «${product}» — 1 : ${t.number(low)}.`
        : `${named(mix)}: 1 : ${t.number(parts)}; в інструкції «${product}» — від 1 : ${t.number(low)} до 1 : ${t.number(high)}.`,
    "off-scalp-product": ({ mix, product }) =>
      `${named(mix)}: «${product}» не можна на шкіру голови. Почати далі від шкіри або вибрати інший засіб.`,
    heat: ({ mix, heatMin, allowedMin }) => {
      const planned = `заплановано ${t.number(heatMin)}\u00a0хв тепла`
      if (allowedMin === null) return `${named(mix)}: ${planned}; інструкція не згадує тепла. Вимкнути тепло.`
      if (allowedMin === 0) return `${named(mix)}: ${planned}; інструкція його забороняє. Вимкнути тепло.`
      return `${named(mix)}: ${planned}; інструкція дозволяє ${t.number(allowedMin)}. Скоротити тепло або вимкнути.`
    },
    "heat-place": ({ mix, forbiddenVolume }) =>
      `${named(mix)}: без тепла за ${forbiddenVolume}\u00a0vol і більше, біля лінії росту та біля подушки начосу.`,
    "heat-time": ({ mix, heatMin, usualMostMin }) =>
      `${named(mix)}: заплановано ${t.number(heatMin)}\u00a0хв тепла; звичайний максимум — ${t.number(usualMostMin)}\u00a0хв, хоч би що дозволяла інструкція.`,
    "open-air-dries": ({ mix }) =>
      `${named(mix)} лежить відкрито, висихає й перестає діяти. Тримати вологою: плівка чи зволоження за вказівкою виробника (поширена практика).`,
    "stronger-roots": ({ mix, volume, endsMix, endsVolume }) =>
      `${named(mix)}, ${t.number(volume)} vol, була б на корені над слабшою сумішшю ${endsMix}, ${t.number(endsVolume)} vol, на кінцях. Тепло шкіри голови освітлює корінь швидше: звичайно там така сама сила або менша (звична практика).`,
    "no-sheet": ({ mix, product }) =>
      `${named(mix)}: немає картки засобу «${product}». Внесіть те, що на упаковці. Якщо засіб містить барвник, потрібен шкірний тест.`,
    "sheet-silent": ({ mix, product, gaps: missing }) =>
      `${named(mix)}: у картці «${product}» не вказано: ${t.or(missing.map((gap) => gaps[gap]))}. Подивіться на упаковці.`,
  }
}
