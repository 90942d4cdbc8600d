import type { Tools } from "../../tools"

/** What the salon has in stock, its scale and its prices. */
export const stock = (t: Tools) => ({
  salon: "Votre salon",
  title: "Votre salon : téléphone, stock, balance et prix",
  contact: {
    name: "Nom du salon",
    phone: "Téléphone du salon",
    emergency: "Numéro d’urgence local",
  },
  developers: "Oxydants en stock",
  otherDeveloper: "ou un autre titre",
  blended:
    "Un titre que vous n’avez pas s’obtient à partir de deux que vous avez, en poids. Si rien n’est coché, tous sont supposés en stock.",
  scale: "Précision de la balance",
  step: (grams: number) => `${t.number(grams)} g`,
  developerPrice: "Prix de 1 kg d’oxydant",
  currency: "Dans votre monnaie. Laissez vide ce que vous ne facturez pas.",
  /** Product sheets, prices or weighings that were set aside. */
  aside: (entries: number) =>
    t.count(entries, {
      one: "# donnée de votre salon est illisible. Elle est gardée telle qu’elle a été écrite.",
      other: "# données de votre salon sont illisibles. Elles sont gardées telles qu’elles ont été écrites.",
    }),
  /** A plan whose copy of the salon's figures is older than they are. */
  differs:
    "Ce plan emploie d’autres fiches produit, stocks, prix ou chiffres appris que ceux du salon aujourd’hui.",
  useSalons: "Ceux du salon",
})
