import type { questions as english } from "../../en/client/questions"

/** What is asked, as it is asked. */
export const questions: typeof english = {
  breathingReaction: "Schon einmal pfeifende Atmung, Husten oder Quaddeln in der Nähe von Blondierung?",
  dyeAllergy: "Allergie gegen Haarfarbe, PPD oder Blondierung (auch laut ärztlichem Allergietest)?",
  otherAllergy: "Andere Allergie: Duftstoffe, Latex oder Gummi, Pflaster, Nickel?",
  faceRash: "Heute Ausschlag im Gesicht?",
  expecting: "Schwanger oder stillend?",
  pastReaction: "Schon einmal auf Haarfarbe, Toner oder Blondierung reagiert?",
  asthma: "Asthma?",
  scalpToday: "Heute Sonnenbrand, Schnitte, Stiche oder Bisse, Läuse oder Infektion an der Kopfhaut?",
  scalpCondition:
    "Erkrankung der Kopfhaut (Schuppenflechte, Ekzem) oder Operation an der Kopfhaut in den letzten 6 Monaten?",
  medicines:
    "Medikament oder Krankheit mit Wirkung auf Haar, Haut, Wundheilung oder mit Ohnmacht (zum Beispiel Retinoide, Kortison, Epilepsie, Blutverdünner)?",
  chemotherapy: "Chemotherapie oder Bestrahlung, jetzt oder in den letzten 6 Monaten?",
  blackHennaTattoo: "Schon einmal ein Tattoo mit schwarzem Henna?",
  blackHennaReaction: "Hat das schwarze Henna gebrannt, gejuckt oder Blasen gebildet?",
  recentRelaxer:
    "Chemische Glättung, Dauerwelle, Keratinglättung oder Farbentferner in den letzten 4 Wochen?",
  homeColour: "Heimcoloration in diesem Haar oder Brunnen- oder Poolwasser (Kupfer)?",
  extensions: "Extensions oder Bondings im Haar?",
  hairlineLoss: "Haarausfall oder Haarbruch an der Haarlinie?",
  lenses: "Heute Kontaktlinsen im Auge?",
  browsOrLashes: "Brauen oder Wimpern gefärbt, geliftet oder verlängert?",
  colouristBreathing:
    "Bekommt die Person, die mischt, von Blondierung Husten, pfeifende Atmung oder Ausschlag?",
}
