import { visitLimits } from "../../../presets/timing/visitLimits"
import type { ComesFor } from "../../core/calendar/daysToCome"
import { coatLetters } from "../../core/placement/coatCodes"
import type { CardsWords } from "../en/cards"
import type { Tools } from "../tools"
import { pieces } from "./common/pieces"

/** The client over time: cards, the visit before, and what has grown since. */
export const cards = (t: Tools): CardsWords => ({
  done: {
    "put-on-card": "Poner el plan en una ficha",
    regrow: "Elegir qué se hace con el crecimiento",
    "propose-regrowth": "Proponer el crecimiento",
    "measure-regrowth": "Medir el crecimiento",
  },
  title: "Clientes",
  open: "Clientes…",
  find: "Buscar cliente",
  order: "Ordenar por",
  orders: { name: "Nombre", last: "Última visita", due: "Próxima visita" },
  newName: "Iniciales o nombre",
  make: "Ficha nueva",
  none: "Aún no hay fichas. Las fichas se quedan en este navegador.",
  nothingFound: "No se encontró ninguna ficha.",
  more: (count) => t.count(count, { one: "Mostrar # más", other: "Mostrar # más" }),
  lastDay: (day) => (day === null ? "sin visitas aún" : `última visita: ${t.date(day)}`),
  due: (due) =>
    due.planned
      ? `prevista para el ${t.date(due.day)}`
      : due.from === due.to
        ? `toca el ${t.date(due.from)}`
        : `toca ${t.days(due.from, due.to)}`,
  all: "Todas las fichas",
  unread: (why) => `Esta ficha no se puede leer y queda como está. ${why}`,
  import: {
    open: "Importar nombres…",
    file: "Archivo de nombres",
    how: "Un archivo de texto o CSV: un nombre por línea, o una tabla con columnas nombre, teléfono, nota.",
    found: (count) => t.count(count, { one: "# nombre nuevo", other: "# nombres nuevos" }),
    known: (count) => t.count(count, { one: "# ya está", other: "# ya están" }),
    empty: (count) => t.count(count, { one: "# fila sin nombre", other: "# filas sin nombre" }),
    unfit: (rows) => `filas que no caben en una ficha: ${rows.join(", ")}`,
    left: (count) => t.count(count, { one: "# fila de más", other: "# filas de más" }),
    told: (items) => `${t.capital(t.and(items))}.`,
    take: (count) => t.count(count, { one: "Crear # ficha", other: "Crear # fichas" }),
    tooLarge: (mostMb) => `Este archivo pasa de ${mostMb} MB. No se ha leído nada.`,
  },
  card: {
    name: "Iniciales o nombre",
    phone: "Teléfono",
    colour: "Color de la ficha",
    colours: { none: "Ninguno", blue: "Azul", orange: "Naranja", green: "Verde", purple: "Morado" },
    sheetLanguage: "Idioma de las hojas de su cliente",
    note: "Notas",
    consent: "Su cliente permite guardar esta ficha",
    consentOn: (day) => `Dicho el ${t.date(day)}.`,
  },
  allergies: {
    title: "Alergias conocidas",
    why: "Detienen cada plan de esta ficha hasta que se confirmen en el día. Una respuesta de hoy no retira ninguna.",
    kind: "Alergia a",
    kinds: { dye: "Tinte o decolorante", other: "Otra cosa", "not-known": "No se sabe" },
    to: "A qué",
    since: "Desde cuándo",
    add: "Añadir una alergia",
    remove: (to) => `Quitar la alergia ${to}`.trim(),
  },
  visits: {
    title: "Visitas",
    none: "Aún no hay ningún plan en esta ficha.",
    line: ({ day, served }) =>
      `${day === null ? "sin fecha" : t.date(day)}, ${served ? "hecha" : "prevista"}`,
    openNow: "abierto ahora",
    next: "Próxima visita, hoy",
    nextHow: "Un plan nuevo para hoy a partir del último. Lo que es del día se pregunta de nuevo.",
    putHere: "Poner el plan abierto en esta ficha",
    takeOff: "Quitar el plan abierto de esta ficha",
  },
  calendar: {
    add: "Añadir a un calendario",
    holds: "Un archivo con las iniciales y los días, nada más. Cada uno se recuerda el día anterior.",
    fileName: "dias",
    title: ({ what, isTest }, initials) => {
      const days = {
        visit: "Visita",
        toner: "Toca matiz",
        frame: "Toca contorno",
      } satisfies Record<ComesFor, string>
      return [isTest ? "Prueba de alergia, como tarde hoy" : days[what], initials]
        .filter((part) => part !== "")
        .join(": ")
    },
    text: ({ isTest, day, until }) =>
      isTest
        ? `Al menos ${visitLimits.alertTestHours} horas antes de la visita, y más si lo dice el fabricante.`
        : until === null
          ? "Lo que es del día se pregunta de nuevo."
          : `Entre el ${t.date(day)} y el ${t.date(until)}.`,
  },
  merge: {
    title: "Unir con otra ficha",
    how: "Para dos fichas de una misma persona. Quedan las notas, alergias y visitas de ambas.",
    ask: (one, other) =>
      `${one} y ${other} pasan a ser una ficha con el nombre ${one}. No se puede deshacer.`,
    do: "Unir",
  },
  remove: {
    open: "Eliminar esta ficha",
    ask: (name, plans) =>
      plans === 0
        ? `La ficha de ${name} se elimina para siempre, con sus notas y alergias.`
        : `La ficha de ${name} se elimina para siempre, con sus notas y alergias. ${t.count(plans, {
            one: "Su # plan queda entre los planes, sin ficha.",
            other: "Sus # planes quedan entre los planes, sin ficha.",
          })}`,
    do: "Eliminar para siempre",
  },
  rights: {
    title: "Lo que se guarda de su cliente",
    saveFile: "Guardar todo de esta ficha",
    savePage: "Guardarlo como página para leer",
    holds:
      "Ambos contienen las respuestas de salud y no están cifrados. Partline vuelve a abrir el archivo; la página es para leer. Un servicio en curso en el sillón no está en ninguno.",
    erase: "Borrar todo de esta ficha para siempre",
    ask: (name, plans) =>
      plans === 0
        ? `La ficha de ${name} se borra para siempre, con sus notas y alergias.`
        : `La ficha de ${name} se borra para siempre, con sus notas y alergias, y ${t.count(plans, {
            one: "su # plan, con todo lo respondido, hecho y visto, también en la papelera.",
            other: "sus # planes, con todo lo respondido, hecho y visto, también en la papelera.",
          })}`,
    stays:
      "Quedan las técnicas y los gramos aprendidos de los cuencos, sin nombre. No alcanza a los archivos, hojas y copias guardados antes: elimínelos usted. No se puede deshacer.",
    do: "Borrar para siempre",
    openFile: "Abrir el archivo de un cliente…",
    file: "Archivo de un cliente",
    log: {
      title: "Fichas guardadas y borradas",
      none: "Ninguna aún.",
      line: ({ what, on, plans }) =>
        `${t.date(on)}: una ficha ${what === "exported" ? "guardada" : "borrada"}, ${t.count(plans, { one: "# plan", other: "# planes" })}`,
    },
  },
  retention: {
    title: "Cuánto se guardan las fichas",
    years: "Preguntarme por quienes no vienen desde hace",
    never: "No preguntar nunca",
    choice: (years) => t.count(years, { one: "# año", other: "# años" }),
    how: "Nada se borra por sí solo.",
    due: (count, years) =>
      `${t.count(count, { one: "# ficha", other: "# fichas" })} sin visitas desde hace ${t.count(years, { one: "# año", other: "# años" })} o más`,
    line: (since) => `último plan o cambio: ${t.date(since)}`,
    stay: "Conservar",
    stayNamed: (name) => `Conservar ${name}`,
  },
  page: {
    about: (day) => `Todo lo que se guarda de esta ficha, a ${t.date(day)}`,
    card: "Ficha",
    noneSaid: "no preguntado",
    visit: (day, plan) => `${t.date(day)}: ${plan}`,
    earlier: (day) => `Hecho el ${t.date(day)}`,
    done: "Hecho",
    planned: "Previsto",
    foil: ({ number, coats, minutesOn, level }) =>
      [
        `Papel ${t.whole(number)}`,
        ...(coats.length === 0 ? [] : [`mezcla ${coatLetters(coats)}`]),
        ...(minutesOn === null ? [] : [t.minutes(Math.round(minutesOn))]),
        ...(level === null ? [] : [`nivel ${t.number(level)}`]),
      ].join(", "),
    unread: "Un plan que no se puede leer",
    unreadHow: "Está en el archivo tal como se escribió.",
    rest: "El dibujo y todas las cifras están en el archivo.",
  },
  here: {
    title: "Ficha",
    none: "Este plan no está en ninguna ficha.",
    choose: "Elegir una ficha…",
    show: "Mostrar la ficha",
  },
  last: {
    title: (day) => `Última visita, ${t.date(day)}`,
    reactions: "Qué fue mal",
    alarm: (what) => what,
    burning: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))}: el cuero cabelludo ardía`,
    "stretch-stop": (foil, piece) =>
      `${t.capital(pieces(t).names([foil], piece))}: el cabello se estiró demasiado`,
    limp: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))}: el cabello estaba flojo`,
    formula: "Fórmula",
    bowl: ({ mix, product, volume, lightenerG, developerG }) =>
      `Mezcla ${mix}: ${product} ${t.grams(lightenerG)} + ${t.number(volume)} vol ${t.grams(developerG)}`,
    toner: ({ product, minutes }) =>
      minutes === null ? product : `${product}, ${t.minutes(Math.round(minutes))}`,
    foils: "Papeles",
    foil: "Papel",
    mix: "Mezcla",
    minutesOn: "Minutos puesto",
    level: "Nivel visto",
    unknown: "no se sabe",
    note: "Notas",
  },
  regrowth: {
    title: "Crecimiento",
    grown: ({ growth, weeks }) =>
      `${t.spread(t.whole(growth.lowMm), t.mm(growth.highMm))} en ${t.count(Math.round(weeks), { one: "# semana", other: "# semanas" })}, estimado`,
    measured: "Crecimiento medido",
    unit: "mm",
    why: "Mida si puede: el cabello puede crecer más despacio de lo estimado. Nunca se propone producto sobre cabello aclarado.",
    counts: (counts) =>
      `${t.whole(counts.due)} por hacer, ${t.whole(counts.soft)} suaves, ${t.whole(counts["too-early"])} demasiado pronto`,
    states: { due: "toca", soft: "suave, dejar", "too-early": "demasiado pronto" },
    begins: ({ lowMm, highMm }) =>
      `aclarado desde ${t.spread(t.whole(lowMm), t.mm(highMm))} del cuero cabelludo`,
    foil: (foil, piece) => t.capital(pieces(t).names([foil], piece)),
    actions: {
      root: "Solo la raíz",
      behind: "Medio paso atrás",
      before: "Medio paso adelante",
      keep: "Como estaba",
      skip: "Omitir",
    },
    /** What the picture of a strand shows. */
    key: "Línea roja: sin producto más allá. Rayado: decolorado antes. Ancho: producto de este plan.",
    picture: ({ coat, begins }) =>
      `Un mechón: ${coat ? `producto de ${t.whole(coat.fromMm)} a ${t.mm(coat.toMm)}` : "sin producto"}; decolorado desde ${t.spread(t.whole(begins.lowMm), t.mm(begins.highMm))} del cuero cabelludo.`,
    propose: "Solo la raíz donde toca; omitir el resto",
    twice: ({ foil, piece, on, fromMm, toMm }) =>
      `El ${pieces(t).names([foil], piece)} cubriría cabello aclarado el ${t.date(on)}, de ${t.whole(fromMm)} a ${t.mm(toMm)} del cuero cabelludo.`,
  },
})
