import type { Tools } from "../../tools"

/** What the salon has in stock, its scale and its prices. */
export const stock = (t: Tools) => ({
  salon: "Su salón",
  title: "Su salón: teléfono, existencias, báscula y precios",
  contact: {
    name: "Nombre del salón",
    phone: "Teléfono del salón",
    emergency: "Número local de emergencias",
  },
  developers: "Oxidantes en existencia",
  otherDeveloper: "u otra concentración",
  blended:
    "Una concentración que no tenga se obtiene de dos que sí, en peso. Si no marca ninguna, se suponen todas en existencia.",
  scale: "Precisión de la báscula",
  step: (grams: number) => `${t.number(grams)} g`,
  developerPrice: "Precio de 1 kg de oxidante",
  currency: "En su moneda. Deje vacío lo que no cobra.",
  /** Product sheets, prices or weighings that were set aside. */
  aside: (entries: number) =>
    t.count(entries, {
      one: "# dato de su salón no se pudo leer. Se conserva tal como se escribió.",
      other: "# datos de su salón no se pudieron leer. Se conservan tal como se escribieron.",
    }),
  /** A plan whose copy of the salon's figures is older than they are. */
  differs:
    "Este plan usa otras fichas, existencias, precios o cifras aprendidas que las que su salón tiene ahora.",
  useSalons: "Usar las del salón",
})
