import type { FormulaWords } from "../../en/formula/formula"
import type { Tools } from "../../tools"

/** What the salon has in stock, its scale and its prices. */
export const stock = (t: Tools): FormulaWords["stock"] => ({
  salon: "Ваш салон",
  title: "Ваш салон: телефон, запас, ваги та ціни",
  contact: {
    name: "Назва салону",
    phone: "Телефон салону",
    emergency: "Номер екстреної допомоги",
  },
  developers: "Окислювачі в запасі",
  otherDeveloper: "або інша сила",
  blended:
    "Силу, якої немає в запасі, складають із двох наявних, за вагою. Якщо жодної не позначено, вважається, що є всі.",
  scale: "Точність ваг",
  step: (grams) => `${t.number(grams)}\u00a0г`,
  developerPrice: "Ціна 1 кг окислювача",
  currency: "У вашій валюті. За що не берете плати, залиште порожнім.",
  /** Product sheets, prices or weighings that were set aside. */
  aside: (entries: number) =>
    t.count(entries, {
      one: "# запис вашого салону не читається. Його збережено, як написано.",
      few: "# записи вашого салону не читаються. Їх збережено, як написано.",
      many: "# записів вашого салону не читаються. Їх збережено, як написано.",
      other: "# запису вашого салону не читаються. Їх збережено, як написано.",
    }),
  differs: "У цьому плані інші картки засобів, запас, ціни або вивчені цифри, ніж зараз у вашому салоні.",
  useSalons: "Узяти дані салону",
})
