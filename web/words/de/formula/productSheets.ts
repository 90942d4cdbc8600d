import type { MinuteField } from "../../../core/mixing/productSheet"
import type { productSheets as english } from "../../en/formula/productSheets"
import type { Tools } from "../../tools"

/** What is printed on a tub, typed in field by field. */
export const productSheets: typeof english = (t) => ({
  title: "Ihre Produktblätter",
  saved: "Gesicherte Produktblätter",
  add: "Produktblatt hinzufügen",
  fromInvented: "oder mit einem erfundenen beginnen",
  chooseOne: "Bitte wählen",

  name: "Name auf der Dose",
  kind: "Das Produkt ist",
  kinds: {
    lightener: "Blondierung",
    "oxidative-toner": "Toner mit Entwickler",
    "root-shade": "Ansatzton",
    "direct-toner": "Toner ohne Entwickler",
  },
  form: "Form",
  forms: { powder: "Pulver", clay: "Clay", cream: "Creme", liquid: "Flüssigkeit" },
  ratio: "Teile Entwickler auf 1 Teil Produkt, nach Gewicht",
  thickest: "Dickste Mischung",
  thinnest: "Dünnste Mischung",
  parts: "Teile",

  developers: "Erlaubte Entwickler",
  volume: ({ volume, percent }) => `${t.number(volume)} Vol, ${t.number(percent)} %`,
  addVolume: (volume) => `${t.number(volume)} Vol hinzufügen`,
  removeVolume: (volume) => `${t.number(volume)} Vol entfernen`,
  otherVolume: "oder ein anderer",
  liftsFrom: "Hellt auf um",
  liftsTo: "bis",

  longest: "Höchstzeit",
  potLife: "Verarbeitungszeit",
  firstCheck: "Erste Kontrolle nach",
  onScalp: "Auf der Kopfhaut erlaubt?",
  patchTest: "Hauttest vom Hersteller verlangt?",
  heat: "Wärme erlaubt?",
  heatMost: "Wärme, höchstens",
  answers: { yes: "Ja", no: "Nein", silent: "Nicht angegeben" },

  additives: "Erlaubte Zusätze",
  additiveName: "Name",
  additiveGrams: "Pro Gramm Produkt",
  replaces: "Anstelle von Entwickler?",
  addAdditive: "Zusatz hinzufügen",
  removeAdditive: "Entfernen",

  price: "Preis",
  priceFor: "für",

  beforeSaving: "Vor dem Sichern",
  save: "Produktblatt sichern",
  cancel: "Abbrechen",
  remove: "Produktblatt entfernen",
  nameTaken: ({ name }) => `Für ${name} gibt es schon ein Produktblatt. Bitte dieses öffnen.`,
  problem: sheetProblemWords(t),
})

const minuteNames: Record<MinuteField, string> = {
  longestMin: "Höchstzeit",
  heatMin: "Wärme",
  potLifeMin: "Verarbeitungszeit",
}

const sheetProblemWords = (t: Tools): ReturnType<typeof english>["problem"] => {
  const ratio = ({ low, high }: { low: number; high: number }) =>
    `1 : ${t.number(low)} bis 1 : ${t.number(high)}`
  return {
    "no-name": "Name: fehlt. Eingeben, was auf der Dose steht.",
    "no-ratio": "Verhältnis: fehlt. Teile Entwickler auf 1 Teil Produkt eingeben, zum Beispiel 1,5 bis 2,5.",
    "ratio-impossible": (said) =>
      `Verhältnis: ${ratio(said)} ist kein Mischungsverhältnis. Teile Entwickler auf 1 Teil Produkt eingeben, zum Beispiel 1,5 bis 2,5.`,
    "ratio-backwards": (said) =>
      `Verhältnis: ${ratio(said)} läuft rückwärts. Die dickere Mischung zuerst eingeben: ${t.number(said.high)} bis ${t.number(said.low)}.`,
    "ratio-upside-down": (said) =>
      `Verhältnis: ${ratio(said)} ist mehr Produkt als Entwickler. Steht auf der Dose 1 : ${t.number(1 / said.high)}, dann ${t.number(1 / said.high)} eingeben.`,
    "no-developers":
      "Entwickler: keiner eingegeben. Jede Stärke hinzufügen, die das Blatt erlaubt, zum Beispiel 10, 20 und 30 Vol.",
    "developer-twice": ({ volume }) =>
      `Entwickler: ${t.number(volume)} Vol steht zweimal da. Einen Eintrag entfernen.`,
    "developer-impossible": ({ volume, mostVolume, mostPercent }) =>
      `Entwickler: ${t.number(volume)} Vol ist kein Entwickler. 1 bis ${t.number(mostVolume)} Vol eingeben: höchstens ${t.number(mostPercent)} % in der EU und im Vereinigten Königreich.`,
    "lift-impossible": ({ volume, low, high, mostLevels }) =>
      `Entwickler: ${t.number(low)} bis ${t.number(high)} Stufen für ${t.number(volume)} Vol ist keine Aufhellung. Den kleineren Wert zuerst eingeben, von 0 bis ${t.number(mostLevels)}, oder beide leer lassen.`,
    "lift-falls": ({ volume, weakerVolume }) =>
      `Entwickler: ${t.number(volume)} Vol hellt weniger auf als ${t.number(weakerVolume)} Vol. Beide mit der Dose vergleichen.`,
    "minutes-impossible": ({ field, minutes, least, most }) =>
      `${minuteNames[field]}: ${t.number(minutes)} Minuten sind nicht möglich. ${t.whole(least)} bis ${t.whole(most)} eingeben oder leer lassen, wenn das Blatt nichts sagt.`,
    "heat-past-longest": "Wärme: länger als die Höchstzeit. Beide mit der Dose vergleichen.",
    "additive-no-name":
      "Zusätze: Einer hat keinen Namen. Eingeben, was auf der Flasche steht, oder entfernen.",
    "additive-grams": ({ name, gPerG }) =>
      name
        ? `Zusätze: ${t.number(gPerG)} g ${name} auf 1 g Produkt. 0 bis 1 g eingeben.`
        : `Zusätze: ${t.number(gPerG)} g auf 1 g Produkt. 0 bis 1 g eingeben.`,
    "price-impossible": "Preis: einen Betrag ab 0 und die Gramm dafür eingeben oder leer lassen.",
  }
}
