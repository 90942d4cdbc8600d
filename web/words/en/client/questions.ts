import type { Question } from "../../../core/document/consultation"

/** What is asked, as it is asked. */
export const questions: Record<Question, string> = {
  breathingReaction: "Ever had wheezing, coughing or hives near lightener?",
  dyeAllergy: "Allergic to hair dye, PPD or lightener (also from a patch test at a doctor’s)?",
  otherAllergy: "Any other allergy: fragrance, latex or rubber, adhesive plasters, nickel?",
  faceRash: "A rash on the face today?",
  expecting: "Pregnant or breastfeeding?",
  pastReaction: "Ever reacted to hair colour, toner or lightener?",
  asthma: "Asthma?",
  scalpToday: "Sunburn, cuts, bites, lice or infection of the scalp today?",
  scalpCondition: "Scalp condition (psoriasis, eczema) or scalp surgery in the last 6 months?",
  medicines:
    "Medicine or illness that affects hair, skin, healing or fainting (for example retinoids, steroids, epilepsy, blood thinners)?",
  chemotherapy: "Chemotherapy or radiotherapy, now or in the last 6 months?",
  blackHennaTattoo: "Ever had a black henna tattoo?",
  blackHennaReaction: "Did the black henna burn, itch or blister?",
  recentRelaxer: "Relaxer, perm, keratin smoothing or colour remover in the last 4 weeks?",
  homeColour: "Home colour on this hair, or well or pool water (copper)?",
  extensions: "Extensions or bonded hair in?",
  hairlineLoss: "Hair loss or breakage along the hairline?",
  lenses: "Contact lenses in today?",
  browsOrLashes: "Brows or lashes tinted, lifted or extended?",
  colouristBreathing: "Does the person mixing get a cough, wheeze or rash from lightener?",
}
