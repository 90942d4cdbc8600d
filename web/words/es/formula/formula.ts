import type { MixingCaution } from "../../../../presets/formula/cautions"
import type { FoilNames } from "../../en/formula/mixing"
import type { Tools } from "../../tools"
import { mixing } from "./mixing"
import { onSheet } from "./onSheet"
import { productSheets } from "./productSheets"
import { quote } from "./quote"
import { stock } from "./stock"
import { tone } from "./tone"

/** What is mixed, how strong, how thick and how much; what it is toned with; what is in stock. */
export const formula = (t: Tools, shared: FoilNames) => ({
  done: {
    "change-developer": ({ mix }: { mix: string }) => `Cambiar el oxidante de la mezcla ${mix}`,
    "change-ratio": ({ mix }: { mix: string }) => `Cambiar la proporción de la mezcla ${mix}`,
    "change-product": ({ mix }: { mix: string }) => `Cambiar el producto de la mezcla ${mix}`,
    "change-additives": ({ mix }: { mix: string }) => `Cambiar los aditivos de la mezcla ${mix}`,
    "plan-today": ({ level }: { level: number }) =>
      `Planificar hoy hasta el nivel ${t.number(level)}, y la próxima visita`,
    "add-mix": ({ mix }: { mix: string }) => `Añadir la mezcla ${mix}`,
    "remove-mix": ({ mix }: { mix: string }) => `Quitar la mezcla ${mix}`,
    "give-foil-mix": ({ foil, mix }: { foil: number; mix: string }) =>
      `Dar al papel ${t.whole(foil)} la mezcla ${mix}`,
    "use-suggestion": "Usar las mezclas sugeridas",
    "change-root-melt": "Cambiar el difuminado de raíz",
    "change-toner": "Cambiar el matizador",
    "change-root-shade": "Cambiar el tono de raíz",
    "use-salon-figures": "Usar las cifras propias del salón",
    "save-sheet": ({ product }: { product: string }) => `Guardar la ficha de ${product}`,
    "remove-sheet": ({ product }: { product: string }) => `Quitar la ficha de ${product}`,
    "change-bottles": "Cambiar los oxidantes en existencia",
    "change-contact": "Cambiar el contacto del salón",
    "change-scale": "Cambiar la precisión de la báscula",
    "change-price": "Cambiar un precio",
    "change-developer-price": "Cambiar el precio del oxidante",
  },

  title: "Fórmula",
  before: "Antes de mezclar",
  allCautions: "Todas las advertencias",
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
    "Las instrucciones del fabricante van primero (proporción, oxidante, tiempo); después, la ley local y las normas de licencia; después, su criterio profesional.",
  tests:
    "Primero la prueba de mechón y toda prueba de alergia que pida el fabricante. Una prueba cuenta cuando se ha leído su resultado.",
  gloves:
    "Guantes para mezclar, aplicar y enjuagar; protección ocular al mezclar polvo o verter oxidante. Mantenga el producto lejos de ojos, pestañas y cejas. En un ojo: enjuague de inmediato.",
  air: "Ventile al mezclar polvo; sin ventilador encima; evite el polvo en el aire. Mezcle cantidades pequeñas y frescas. Cubra el bol sin apretar; no lo selle nunca.",
  bowl: "Mezcle solo lo que permite el fabricante, en un bol no metálico con un utensilio no metálico. No devuelva nunca los restos al bote.",
  flames:
    "Nada de llamas, herramientas calientes ni aerosoles (laca, champú en seco) cerca del polvo, la mezcla o los papeles. Los papeles con producto van al agua, no a la basura.",
  heat: "Sin calor, salvo que lo permitan las instrucciones del fabricante. Si su cliente nota calor, escozor o dolor: retire el papel y enjuague. Las quemaduras pueden aparecer más tarde.",
  time: "Nunca más tiempo en el cabello del que dicen las instrucciones; después enjuague a fondo. El decolorante no se deja puesto nunca.",
}

export type FormulaWords = ReturnType<typeof formula>
