import type { FormulaWords } from "../../en/formula/formula"
import type { Tools } from "../../tools"
import { type FoilNames, mixing } from "./mixing"
import { onSheet } from "./onSheet"
import { productSheets } from "./productSheets"
import { quote } from "./quote"
import { stock } from "./stock"
import { tone } from "./tone"

/** What is mixed, how strong, how thick and how much; what it is toned with; what is in stock. */
export const formula = (t: Tools, shared: FoilNames): FormulaWords => ({
  done: {
    "change-developer": ({ mix }) => `Зміна окислювача: суміш ${mix}`,
    "change-ratio": ({ mix }) => `Зміна пропорції: суміш ${mix}`,
    "change-product": ({ mix }) => `Зміна засобу: суміш ${mix}`,
    "change-additives": ({ mix }) => `Зміна добавок: суміш ${mix}`,
    "plan-today": ({ level }) => `План на сьогодні: до рівня ${t.number(level)}, і наступний візит`,
    "add-mix": ({ mix }) => `Нова суміш ${mix}`,
    "remove-mix": ({ mix }) => `Вилучення: суміш ${mix}`,
    "give-foil-mix": ({ foil, mix }) => `Фольга ${t.whole(foil)}: суміш ${mix}`,
    "use-suggestion": "Пропоновані суміші",
    "change-root-melt": "Зміна розтушовки кореня",
    "change-toner": "Зміна тонера",
    "change-root-shade": "Зміна відтінку для кореня",
    "use-salon-figures": "Цифри салону",
    "save-sheet": ({ product }) => `Збереження картки засобу: ${product}`,
    "remove-sheet": ({ product }) => `Вилучення картки засобу: ${product}`,
    "change-bottles": "Зміна наявних окислювачів",
    "change-contact": "Зміна контактів салону",
    "change-scale": "Зміна точності ваг",
    "change-price": "Зміна ціни",
    "change-developer-price": "Зміна ціни окислювача",
  },

  title: "Формула",
  before: "Перш ніж змішувати",
  allCautions: "Усі застереження",
  caution: {
    directions:
      "Передусім інструкція виробника (пропорція, окислювач, час), потім місцеві закони та правила ліцензування, потім ваше фахове судження.",
    tests:
      "Спочатку тест на пасмі та шкірний тест, якого вимагає виробник. Тест зараховується, коли його результат оцінено.",
    gloves:
      "Рукавички під час змішування, нанесення й змивання; захист очей під час змішування порошку та наливання окислювача. Не допускати засобу в очі, на вії та брови. Потрапив в око: промивати негайно.",
    air: "Провітрювати, змішуючи порошок; без вентилятора на нього; уникати пилу. Змішувати свіже малими порціями. Накривати миску нещільно; ніколи не закривати герметично.",
    bowl: "Змішувати лише те, що дозволяє виробник, у неметалевій мисці неметалевим інструментом. Ніколи не повертати залишки в упаковку.",
    flames:
      "Жодного вогню, гарячих інструментів чи аерозолів (лак, сухий шампунь) поблизу порошку, суміші чи фольги. Фольгу із засобом — у воду, не в смітник.",
    heat: "Без тепла, якщо інструкція виробника його не дозволяє. Якщо клієнт відчуває тепло, печіння або біль: зняти фольгу й змити. Опіки можуть проявитися пізніше.",
    time: "Ніколи не тримати на волоссі довше, ніж каже інструкція; потім ретельно змити. Освітлювач ніколи не залишають у волоссі.",
  },
  mixing: mixing(t, shared),
  tone: tone(t),
  quote: quote(t),
  productSheets: productSheets(t),
  stock: stock(t),
  onSheet: onSheet(t, tone(t)),
})
