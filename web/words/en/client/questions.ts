import type { Question } from "../../../core/document/consultation"

/** What is asked, as it is asked. */
export const questions: Record<Question, string> = {
  pastReaction: "Ever reacted to hair colour, toner or lightener?",
  breathingReaction: "Ever had wheezing, coughing or hives near lightener?",
  asthma: "Asthma?",
  allergy: "An allergy: to hair dye, lightener, fragrance, latex or rubber, adhesive plasters or nickel?",
  blackHennaTattoo: "Ever had a black henna tattoo?",
  blackHennaReaction: "Did the black henna burn, itch or blister?",
  faceRash: "A rash on the face today?",
  expecting: "Pregnant or breastfeeding?",
  scalpCondition:
    "Scalp condition (psoriasis, eczema, infection, cuts, sunburn) or scalp surgery in the last 6 months?",
  chemotherapy: "Chemotherapy or radiotherapy, now or in the last 6 months?",
  recentRelaxer: "Relaxer, perm, keratin smoothing or colour remover in the last 4 weeks?",
  hairlineLoss: "Hair loss or breakage along the hairline?",
  lenses: "Contact lenses in today?",
  browsOrLashes: "Brows or lashes tinted, lifted or extended?",
  colouristBreathing: "Does the person mixing get a cough, wheeze or rash from lightener?",
}
