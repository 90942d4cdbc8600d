import type { HomeCare, SkinSign } from "../../../../presets/sheets/aftercare"
import type { Tools } from "../../tools"

/** The sheet to take home, and the salon's record card. */
export const cards = (t: Tools) => ({
  takeHome: {
    about: "Para llevar a casa",
    done: "Lo que se hizo",
    planned: "Lo que está previsto",
    picture: "El dibujo muestra dónde, no el color.",
    mirror: "Como se ve usted en el espejo",
    skin: "Observe su piel y su cuero cabelludo hoy y durante tres días",
    signs: {
      irritation:
        "Picor, rojez o erupción: enjuague con abundante agua tibia durante 20 minutos, no ponga nada más y llámenos. Si no mejora en un día: consulte a un farmacéutico o un médico.",
      burn: "Ampollas, piel que supura o dolor que no cede: acuda al médico el mismo día. Las quemaduras pueden aparecer más tarde.",
      breathing: "Dificultad para respirar, o hinchazón de la cara, los labios, la lengua o la garganta:",
      "take-along": "Lleve esta hoja: nombra los productos y la fecha.",
    } satisfies Record<SkinSign, string>,
    breathing: (number: string) =>
      `Dificultad para respirar, o hinchazón de la cara, los labios, la lengua o la garganta: use su propio autoinyector de adrenalina si lo tiene, llame de inmediato al ${number || "número de emergencias (_________)"} y acuéstese, salvo si le cuesta respirar.`,
    care: "Cuidado en casa",
    careWhen: {
      "first-days": "Primeros 2 días",
      "every-wash": "En cada lavado",
      weekly: "Cada semana",
      heat: "Calor",
      "sun-and-pool": "Sol y piscina",
    } satisfies Record<HomeCare, string>,
    careText: {
      "first-days": "Sin lavar, sin gomas ni pinzas apretadas.",
      "every-wash":
        "Agua tibia, champú suave, acondicionador en los largos decolorados. Desenrede de las puntas hacia arriba.",
      weekly:
        "Si el cabello decolorado se ve demasiado cálido: un acondicionador matizador, según sus instrucciones. Después, una mascarilla.",
      heat: "Use protector de calor según su etiqueta. Herramientas calientes solo con el cabello seco, a la temperatura más baja que funcione.",
      "sun-and-pool":
        "Antes de nadar, moje el cabello y ponga acondicionador; enjuague bien después. Sombrero si el sol es fuerte.",
    } satisfies Record<HomeCare, string>,
    back: "Cuándo volver",
    toner: "Matizador",
    frame: "Marco del rostro",
    days: (from: string, to: string) => t.days(from, to),
    regrowth: (from: string, to: string) => `${t.days(from, to)} (solo en el crecimiento)`,
    test: "Prueba alérgica",
    testBy: (hours: number, day: string) =>
      `Antes de cada matizador o coloración, como indique su fabricante, al menos ${t.whole(hours)} horas antes: para la primera fecha, como tarde el ${t.date(day)}.`,
    questions: "¿Preguntas?",
    ask: (salon: string, phone: string) =>
      [salon || "Salón ______________", phone || "teléfono ______________"].join(", "),
    mind: "Atención",
    defers:
      "Siga las instrucciones de cada producto; ellas, la ley local y las normas de licencia van antes que esta hoja. Guárdela.",
  },

  record: {
    about: "Ficha de cliente",
    private:
      "Confidencial: contiene respuestas de salud. Guárdela donde solo pueda leerla el personal autorizado.",
    hair: "Cabello y deseos",
    planned: "Lo que está previsto",
    mixed: "Mezclado",
    weighed: "Queda en el bol",
    weigh: (bowls: readonly { name: string; leftG: number | null }[]) =>
      bowls.map(({ name, leftG }) => `${name} ${leftG === null ? "________" : t.number(leftG)} g`).join(", "),
    toner: "matizador",
    mix: (letter: string) => `mezcla ${letter}`,
    times: "Previsto y real, en minutos desde la primera raya",
    heads: {
      number: "N.º",
      foil: "Papel",
      mix: "Mezcla",
      on: "Inicio",
      off: "Fin",
      planned: "plan",
      actual: "real",
      checks: "Min puesto y revisiones",
    },
    alarms: "Qué salió mal",
    takenBack: (what: string) => `${what} (deshecho)`,
    next: "La próxima vez",
    defers:
      "Una fórmula no es un encargo que se repite: en cada visita van primero una nueva consulta, las pruebas y las instrucciones del fabricante; después, la ley local y las normas de licencia.",
  },
})
