import type { Question } from "../../../core/document/consultation"

/** What is asked, as it is asked. */
export const questions: Record<Question, string> = {
  breathingReaction: "Déjà eu respiration sifflante, toux ou urticaire près d’un décolorant ?",
  dyeAllergy:
    "Allergie à la coloration capillaire, à la PPD ou au décolorant (aussi d’après un test chez un médecin) ?",
  otherAllergy: "Autre allergie : parfum, latex ou caoutchouc, pansements adhésifs, nickel ?",
  faceRash: "Une éruption au visage aujourd’hui ?",
  expecting: "Grossesse ou allaitement ?",
  pastReaction: "Déjà réagi à une coloration, une patine ou un décolorant ?",
  asthma: "Asthme ?",
  scalpToday: "Coup de soleil, coupures, piqûres, poux ou infection du cuir chevelu aujourd’hui ?",
  scalpCondition:
    "Affection du cuir chevelu (psoriasis, eczéma) ou opération du cuir chevelu ces 6 derniers mois ?",
  medicines:
    "Médicament ou maladie qui touche les cheveux, la peau, la cicatrisation ou provoque des évanouissements (par exemple rétinoïdes, corticoïdes, épilepsie, anticoagulants) ?",
  chemotherapy: "Chimiothérapie ou radiothérapie, en cours ou ces 6 derniers mois ?",
  blackHennaTattoo: "Déjà eu un tatouage au henné noir ?",
  blackHennaReaction: "Le henné noir a-t-il brûlé, démangé ou fait des cloques ?",
  recentRelaxer:
    "Défrisage, permanente, lissage à la kératine ou décapage de couleur ces 4 dernières semaines ?",
  homeColour: "Coloration maison sur ces cheveux, ou eau de puits ou de piscine (cuivre) ?",
  extensions: "Extensions ou cheveux collés en place ?",
  hairlineLoss: "Perte de cheveux ou casse le long de la lisière ?",
  lenses: "Lentilles de contact aujourd’hui ?",
  browsOrLashes: "Sourcils ou cils teints, rehaussés ou avec extensions ?",
  colouristBreathing: "Le décolorant donne-t-il toux, respiration sifflante ou éruption à qui mélange ?",
}
