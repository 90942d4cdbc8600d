import type { ProductSheet } from "../../../../presets/formula/productSheet"
import type { MinuteField, SheetProblem } from "../../../core/mixing/productSheet"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What is printed on a tub, typed in field by field. */
export const productSheets = (t: Tools) => ({
  title: "Vos fiches produit",
  saved: "Fiches produit enregistrées",
  add: "Ajouter une fiche produit",
  fromInvented: "ou partir d’une fiche inventée",
  chooseOne: "Choisir",

  name: "Nom sur le pot",
  kind: "Type",
  kinds: {
    lightener: "Décolorant",
    "oxidative-toner": "Patine avec oxydant",
    "root-shade": "Nuance racine",
    "direct-toner": "Patine sans oxydant",
  } satisfies Record<ProductSheet["kind"], string>,
  form: "Forme",
  forms: { powder: "Poudre", clay: "Argile", cream: "Crème", liquid: "Liquide" } satisfies Record<
    ProductSheet["form"],
    string
  >,
  ratio: "Parts d’oxydant pour 1 de produit, en poids",
  thickest: "Le plus épais",
  thinnest: "Le plus fluide",
  parts: "parts",

  developers: "Oxydants permis",
  volume: ({ volume, percent }: { volume: number; percent: number }) =>
    `${t.number(volume)} vol, ${t.number(percent)} %`,
  addVolume: (volume: number) => `Ajouter ${t.number(volume)} vol`,
  removeVolume: (volume: number) => `Retirer ${t.number(volume)} vol`,
  otherVolume: "ou un autre",
  liftsFrom: "Éclaircit de",
  liftsTo: "à",

  longest: "Temps max",
  potLife: "Durée d’emploi",
  firstCheck: "Premier contrôle à",
  onScalp: "Permis sur cuir chevelu ?",
  patchTest: "Touche d’essai demandée par le fabricant ?",
  heat: "Chaleur permise ?",
  heatMost: "Chaleur, au plus",
  answers: { yes: "Oui", no: "Non", silent: "Non précisé" },

  additives: "Additifs permis",
  additiveName: "Nom",
  additiveGrams: "Par gramme de produit",
  replaces: "À la place d’oxydant ?",
  addAdditive: "Ajouter un additif",
  removeAdditive: "Retirer",

  price: "Prix",
  priceFor: "pour",

  beforeSaving: "Avant d’enregistrer",
  save: "Enregistrer la fiche produit",
  cancel: "Annuler",
  remove: "Retirer la fiche produit",
  nameTaken: ({ name }: { name: string }) =>
    `Il y a déjà une fiche produit « ${name} ». Ouvrez plutôt celle-là.`,
  problem: sheetProblemWords(t),
})

const minuteNames: Record<MinuteField, string> = {
  longestMin: "Temps max",
  heatMin: "Chaleur",
  potLifeMin: "Durée d’emploi",
}

const sheetProblemWords = (t: Tools) => {
  const ratio = ({ low, high }: { low: number; high: number }) =>
    `1 : ${t.number(low)} à 1 : ${t.number(high)}`
  return {
    "no-name": "Nom : le produit n’en a pas. Saisissez ce qui est sur le pot.",
    "no-ratio": "Dosage : non saisi. Saisissez les parts d’oxydant pour 1 de produit, par exemple 1,5 à 2,5.",
    "ratio-impossible": (said) =>
      `Dosage : ${ratio(said)} n’est pas un dosage. Saisissez les parts d’oxydant pour 1 de produit, par exemple 1,5 à 2,5.`,
    "ratio-backwards": (said) =>
      `Dosage : ${ratio(said)} est à l’envers. Saisissez le mélange le plus épais d’abord : ${t.number(said.high)} à ${t.number(said.low)}.`,
    "ratio-upside-down": (said) =>
      `Dosage : ${ratio(said)}, c’est plus de produit que d’oxydant. Si le pot dit 1 : ${t.number(1 / said.high)}, saisissez ${t.number(1 / said.high)}.`,
    "no-developers":
      "Oxydants : aucun saisi. Ajoutez chaque titre que permet la fiche, par exemple 10, 20 et 30 vol.",
    "developer-twice": ({ volume }) => `Oxydants : ${t.number(volume)} vol y est deux fois. Retirez-en un.`,
    "developer-impossible": ({ volume, mostVolume, mostPercent }) =>
      `Oxydants : ${t.number(volume)} vol n’est pas un oxydant. Saisissez de 1 à ${t.number(mostVolume)} vol : au plus ${t.number(mostPercent)} % dans l’UE et au Royaume-Uni.`,
    "lift-impossible": ({ volume, low, high, mostLevels }) =>
      `Oxydants : de ${t.number(low)} à ${t.number(high)} tons pour ${t.number(volume)} vol n’est pas un éclaircissement. Saisissez le chiffre bas d’abord, de 0 à ${t.number(mostLevels)}, ou laissez les deux vides.`,
    "lift-falls": ({ volume, weakerVolume }) =>
      `Oxydants : ${t.number(volume)} vol éclaircit moins que ${t.number(weakerVolume)} vol. Vérifiez les deux sur le pot.`,
    "minutes-impossible": ({ field, minutes, least, most }) =>
      `${minuteNames[field]} : ${t.number(minutes)} minutes, c’est impossible. Saisissez de ${t.whole(least)} à ${t.whole(most)}, ou laissez vide si la fiche n’en dit rien.`,
    "heat-past-longest": "Chaleur : plus longue que le temps max. Vérifiez les deux sur le pot.",
    "additive-no-name": "Additifs : l’un n’a pas de nom. Saisissez ce qui est sur le flacon, ou retirez-le.",
    "additive-grams": ({ name, gPerG }) =>
      name
        ? `Additifs : ${name}, ${t.number(gPerG)} g pour 1 g de produit. Saisissez de 0 à 1 g.`
        : `Additifs : ${t.number(gPerG)} g pour 1 g de produit. Saisissez de 0 à 1 g.`,
    "price-impossible":
      "Prix : saisissez un montant de 0 ou plus et les grammes qu’il achète, ou laissez vide.",
  } satisfies Sentences<SheetProblem>
}
