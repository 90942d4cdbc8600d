import type { classVerbs as english } from "../en/classVerbs"

/** The verbs of a class, and how the size of a head is given. */
export const headOptions = {
  length: "mm, de la ceja a la parte trasera de la cabeza, con calibre",
  breadth: "mm, en lo más ancho, con calibre",
  height: "mm, de la oreja a lo más alto, con calibre",
  around: "mm, alrededor de la cabeza, con cinta",
  over: "mm, de oreja a oreja por encima, con cinta",
  "front-to-nape": "mm, del contorno frontal a la nuca por encima, con cinta",
  hairline: "round, straight, receding o peaked; round si no se indica",
}

export const classVerbs: typeof english = {
  lay: {
    summary: "Una técnica puesta en una cabeza según sus medidas, como plan.",
    details: [
      "TECHNIQUE es un archivo de técnica o el id de una de la casa. Sin medidas se pone en la cabeza usual.",
    ],
    options: {
      ...headOptions,
      out: "dónde escribir el plan",
    },
  },
  handout: {
    summary:
      "La hoja de una técnica para cada persona de una clase en PDF, en su propia cabeza si está medida.",
    details: [
      "TECHNIQUE es un archivo de técnica o el id de una de la casa. No se escribe nada hasta que todas estén hechas.",
      "--language es el idioma de las hojas; las frases sobre el comando van en el de --messages.",
    ],
    options: {
      names: "la clase, CSV con la columna name",
      heads:
        "sus cabezas, CSV: name y en mm length, breadth, height o around, over, front-to-nape; hairline si no es round",
      paper: "a4 o letter; si no se indica, letter para en-US y a4 para los demás",
      out: "la carpeta donde escribir; se crea si no existe",
      messages: "idioma de las frases sobre el comando; en-GB si no se indica",
    },
  },
  compare: {
    summary:
      "Planes de alumnos comparados con un modelo, sección por sección, por criterios, cada uno con su tolerancia.",
    details: [
      "MODEL es un plan, un archivo de técnica o el id de una técnica de la casa. Se pone en la cabeza de cada persona: una",
      "técnica según sus medidas, otro plan punto por punto según el contorno. Se empareja por tipo, lado y lugar, sea cual sea",
      "el orden. Lo que falta no cumple ningún criterio. Las tolerancias son supuestos que fija quien enseña.",
    ],
    options: {
      names: "la clase, CSV con las columnas name y file",
      out: "dónde escribir la tabla de la clase, CSV",
      sheets: "carpeta para una hoja de evaluación de cada persona en PDF; se crea si no existe",
      within:
        "tolerancias, con coma entre ellas: hairline=2,back=2,along=5 (mm), angle=10 (grados), length=10 (%), depth=1,start=2 (mm)",
      paper: "papel de las hojas, a4 o letter; si no se indica, letter para en-US y a4 para los demás",
      messages: "idioma de las frases sobre el comando; en-GB si no se indica",
    },
  },
}
