import type { stock as english } from "../../en/formula/stock"

/** What the salon has in stock, its scale and its prices. */
export const stock: typeof english = (t) => ({
  salon: "Ihr Salon",
  title: "Ihr Salon: Telefon, Vorrat, Waage und Preise",
  contact: {
    name: "Name des Salons",
    phone: "Telefon des Salons",
    emergency: "Örtliche Notrufnummer",
  },
  developers: "Vorrätige Entwickler",
  otherDeveloper: "oder eine andere Stärke",
  blended:
    "Eine Stärke, die Sie nicht vorrätig haben, wird aus zweien nach Gewicht gemischt. Ist keine markiert, gelten alle als vorrätig.",
  scale: "Waagenauflösung",
  step: (grams) => `${t.number(grams)} g`,
  developerPrice: "Preis für 1 kg Entwickler",
  currency: "In Ihrer Währung. Leer lassen, was Sie nicht berechnen.",
  /** Product sheets, prices or weighings that were set aside. */
  aside: (entries: number) =>
    t.count(entries, {
      one: "# Eintrag Ihres Salons ist nicht lesbar. Er bleibt, wie er geschrieben wurde.",
      other: "# Einträge Ihres Salons sind nicht lesbar. Sie bleiben, wie sie geschrieben wurden.",
    }),
  differs:
    "Dieser Plan nutzt andere Produktblätter, Vorräte, Preise oder gelernte Werte als Ihr Salon jetzt.",
  useSalons: "Die des Salons verwenden",
})
