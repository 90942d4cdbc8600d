import type { Tools } from "../../tools"

/** What the salon has in stock, its scale and its prices. */
export const stock = (t: Tools) => ({
  salon: "Your salon",
  title: "Your salon: phone, stock, scale and prices",
  contact: {
    name: "Salon’s name",
    phone: "Salon’s phone",
    emergency: "Local emergency number",
  },
  developers: "Developers in stock",
  otherDeveloper: "or another strength",
  blended:
    "A strength you do not stock is blended from two you do, by weight. If none is marked, all are assumed in stock.",
  scale: "Scale resolution",
  step: (grams: number) => `${t.number(grams)} g`,
  developerPrice: "Price of 1 kg of developer",
  currency: "In your currency. Leave blank what you do not charge for.",
  /** Product sheets, prices or weighings that were set aside. */
  aside: (entries: number) =>
    t.count(entries, {
      one: "# entry of your salon could not be read. It is kept as it was written.",
      other: "# entries of your salon could not be read. They are kept as they were written.",
    }),
  /** A plan whose copy of the salon's figures is older than they are. */
  differs: "This plan uses other product sheets, stock, prices or learnt figures than your salon does now.",
  useSalons: "Use the salon’s",
})
