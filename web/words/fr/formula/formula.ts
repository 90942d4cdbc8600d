import type { MixingCaution } from "../../../../presets/formula/cautions"
import type { Tools } from "../../tools"
import { type FoilNames, mixing } from "./mixing"
import { onSheet } from "./onSheet"
import { productSheets } from "./productSheets"
import { quote } from "./quote"
import { stock } from "./stock"
import { tone } from "./tone"

/** What is mixed, how strong, how thick and how much; what it is toned with; what is in stock. */
export const formula = (t: Tools, shared: FoilNames) => ({
  done: {
    "change-developer": ({ mix }: { mix: string }) => `Modifier l’oxydant du mélange ${mix}`,
    "change-ratio": ({ mix }: { mix: string }) => `Modifier le dosage du mélange ${mix}`,
    "change-product": ({ mix }: { mix: string }) => `Modifier le produit du mélange ${mix}`,
    "change-additives": ({ mix }: { mix: string }) => `Modifier les additifs du mélange ${mix}`,
    "plan-today": ({ level }: { level: number }) =>
      `Prévoir la hauteur ${t.number(level)} aujourd’hui, et la prochaine séance`,
    "add-mix": ({ mix }: { mix: string }) => `Ajouter le mélange ${mix}`,
    "remove-mix": ({ mix }: { mix: string }) => `Retirer le mélange ${mix}`,
    "give-foil-mix": ({ foil, mix }: { foil: number; mix: string }) =>
      `Donner le mélange ${mix} à la papillote ${t.whole(foil)}`,
    "use-suggestion": "Prendre les mélanges proposés",
    "change-root-melt": "Modifier le fondu racine",
    "change-toner": "Modifier la patine",
    "change-root-shade": "Modifier la nuance racine",
    "use-salon-figures": "Prendre les chiffres du salon",
    "save-sheet": ({ product }: { product: string }) => `Enregistrer la fiche produit : ${product}`,
    "remove-sheet": ({ product }: { product: string }) => `Retirer la fiche produit : ${product}`,
    "change-bottles": "Modifier les oxydants en stock",
    "change-contact": "Modifier les coordonnées du salon",
    "change-scale": "Modifier la précision de la balance",
    "change-price": "Modifier un prix",
    "change-developer-price": "Modifier le prix de l’oxydant",
  },

  title: "Formule",
  before: "Avant de mélanger",
  allCautions: "Mises en garde",
  caution: cautionWords satisfies Record<MixingCaution, string>,
  mixing: mixing(t, shared),
  tone: tone(t),
  quote: quote(t),
  productSheets: productSheets(t),
  stock: stock(t),
  onSheet: onSheet(t, tone(t)),
})

const cautionWords = {
  directions:
    "Le mode d’emploi du fabricant passe en premier (dosage, oxydant, temps), puis la loi locale et les règles d’exercice de la profession, puis votre jugement professionnel.",
  tests:
    "D’abord le test mèche, et toute touche d’essai que demande le fabricant. Un test compte une fois son résultat lu.",
  gloves:
    "Gants pour mélanger, appliquer et rincer ; protection des yeux pour mélanger la poudre ou verser l’oxydant. Tenir le produit à l’écart des yeux, des cils et des sourcils. Dans un œil : rincer immédiatement.",
  air: "Aérer en mélangeant la poudre ; pas de ventilateur dirigé dessus ; éviter la poussière. Mélanger de petites quantités, au moment de l’emploi. Couvrir le bol sans serrer ; ne jamais le fermer hermétiquement.",
  bowl: "Ne mélanger que ce que permet le fabricant, dans un bol non métallique avec un outil non métallique. Ne jamais remettre les restes dans le pot.",
  flames:
    "Ni flamme, ni appareil chauffant, ni aérosol (laque, shampooing sec) près de la poudre, du mélange ou des papillotes. Les papillotes avec produit vont dans l’eau, pas à la poubelle.",
  heat: "Pas de chaleur sauf si le mode d’emploi du fabricant la permet. Si la personne sent de la chaleur, des picotements ou une douleur : retirer la papillote et rincer. Une brûlure peut apparaître plus tard.",
  time: "Jamais plus longtemps sur les cheveux que ne le dit le mode d’emploi ; ensuite, rincer à fond. Un décolorant ne se laisse jamais sans rinçage.",
}
