import type { formula as english } from "../../en/formula/formula"
import { mixing } from "./mixing"
import { onSheet } from "./onSheet"
import { productSheets } from "./productSheets"
import { quote } from "./quote"
import { stock } from "./stock"
import { tone } from "./tone"

/** What is mixed, how strong, how thick and how much; what it is toned with; what is in stock. */
export const formula: typeof english = (t, shared) => ({
  done: {
    "change-developer": ({ mix }) => `Entwickler von Mischung ${mix} ändern`,
    "change-ratio": ({ mix }) => `Verhältnis von Mischung ${mix} ändern`,
    "change-product": ({ mix }) => `Produkt von Mischung ${mix} ändern`,
    "change-additives": ({ mix }) => `Zusätze von Mischung ${mix} ändern`,
    "plan-today": ({ level }) => `Heute bis Tonhöhe ${t.number(level)} planen, dazu den nächsten Termin`,
    "add-mix": ({ mix }) => `Mischung ${mix} hinzufügen`,
    "remove-mix": ({ mix }) => `Mischung ${mix} entfernen`,
    "give-foil-mix": ({ foil, mix }) => `Folie ${t.whole(foil)} mit Mischung ${mix}`,
    "use-suggestion": "Vorschlag verwenden",
    "change-root-melt": "Ansatzverlauf ändern",
    "change-toner": "Toner ändern",
    "change-root-shade": "Ansatzton ändern",
    "use-salon-figures": "Die Werte des Salons verwenden",
    "save-sheet": ({ product }) => `Produktblatt sichern: ${product}`,
    "remove-sheet": ({ product }) => `Produktblatt entfernen: ${product}`,
    "change-bottles": "Vorrätige Entwickler ändern",
    "change-contact": "Kontakt des Salons ändern",
    "change-scale": "Waagenauflösung ändern",
    "change-price": "Preis ändern",
    "change-developer-price": "Preis des Entwicklers ändern",
  },

  title: "Rezeptur",
  before: "Vor dem Mischen",
  allCautions: "Alle Warnhinweise",
  caution: {
    directions:
      "Zuerst gelten die Herstellerangaben (Verhältnis, Entwickler, Zeit), dann örtliches Recht und Zulassungsregeln, dann Ihr fachliches Urteil.",
    tests:
      "Zuerst eine Probesträhne und jeden Hauttest, den der Hersteller verlangt. Ein Test zählt erst, wenn sein Ergebnis abgelesen ist.",
    gloves:
      "Handschuhe beim Mischen, Auftragen und Ausspülen; Augenschutz beim Mischen von Pulver oder Gießen von Entwickler. Produkt von Augen, Wimpern und Brauen fernhalten. Im Auge: sofort ausspülen.",
    air: "Beim Mischen von Pulver lüften; keinen Ventilator darauf richten; Staub meiden. Kleine Mengen frisch mischen. Die Schale locker abdecken; nie dicht verschließen.",
    bowl: "Nur mischen, was der Hersteller erlaubt, in einer Schale und mit einem Werkzeug ohne Metall. Reste nie in die Dose zurückgeben.",
    flames:
      "Keine Flammen, heißen Geräte oder Sprühdosen (Haarspray, Trockenshampoo) in der Nähe von Pulver, Mischung oder Folien. Folien mit Produkt kommen ins Wasser, nicht in den Abfall.",
    heat: "Keine Wärme, außer die Herstellerangaben erlauben sie. Spürt der Gast Wärme, Brennen oder Schmerz: Folie abnehmen und ausspülen. Verbrennungen können sich später zeigen.",
    time: "Nie länger im Haar als angegeben; dann gründlich ausspülen. Blondierung bleibt nie im Haar.",
  },
  mixing: mixing(t, shared),
  tone: tone(t),
  quote: quote(t),
  productSheets: productSheets(t),
  stock: stock(t),
  onSheet: onSheet(t, tone(t)),
})
