import type { Question } from "../../../core/document/consultation"

/** What is asked, as it is asked. */
export const questions: Record<Question, string> = {
  breathingReaction: "¿Alguna vez pitidos al respirar, tos o ronchas cerca de un decolorante?",
  dyeAllergy: "¿Alergia a tinte, PPD o decolorante (también por una prueba de parche en el médico)?",
  otherAllergy: "¿Otra alergia: perfumes, látex o caucho, esparadrapo o tiritas, níquel?",
  faceRash: "¿Una erupción en la cara hoy?",
  expecting: "¿Embarazo o lactancia?",
  pastReaction: "¿Alguna reacción anterior a tinte, matizador o decolorante?",
  asthma: "¿Asma?",
  scalpToday: "¿Quemadura de sol, cortes, picaduras, piojos o infección en el cuero cabelludo hoy?",
  scalpCondition: "¿Afección del cuero cabelludo (psoriasis, eccema) o cirugía en él en los últimos 6 meses?",
  medicines:
    "¿Medicamento o enfermedad que afecte al cabello, la piel, la cicatrización o cause desmayos (por ejemplo retinoides, corticoides, epilepsia, anticoagulantes)?",
  chemotherapy: "¿Quimioterapia o radioterapia, ahora o en los últimos 6 meses?",
  blackHennaTattoo: "¿Alguna vez un tatuaje de henna negra?",
  blackHennaReaction: "¿La henna negra quemó, picó o hizo ampollas?",
  recentRelaxer:
    "¿Alisado químico, permanente, alisado de queratina o decapante de color en las últimas 4 semanas?",
  homeColour: "¿Tinte casero en este cabello, o agua de pozo o de piscina (cobre)?",
  extensions: "¿Lleva extensiones o cabello pegado?",
  hairlineLoss: "¿Caída o rotura del cabello a lo largo del contorno?",
  lenses: "¿Lleva lentes de contacto hoy?",
  browsOrLashes: "¿Cejas o pestañas teñidas, con lifting o extensiones?",
  colouristBreathing: "¿A quien mezcla le da tos, pitidos o erupción el decolorante?",
}
