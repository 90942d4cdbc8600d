/** The verbs of a class, and how the size of a head is given. */
export const headOptions = {
  length: "mm, brow to the back of the head, with a caliper",
  breadth: "mm, at the widest, with a caliper",
  height: "mm, ear to the top, with a caliper",
  around: "mm, around the head, with a tape",
  over: "mm, ear to ear over the top, with a tape",
  "front-to-nape": "mm, front hairline to nape over the top, with a tape",
  hairline: "round, straight, receding or peaked; round if not given",
}

export const classVerbs = {
  lay: {
    summary: "A technique laid on a head by its measures, as a plan.",
    details: [
      "TECHNIQUE is a technique file or the id of one of the house. Without measures it is laid on the usual head.",
    ],
    options: {
      ...headOptions,
      out: "where to write the plan",
    },
  },
  handout: {
    summary:
      "The handout of a technique for each of a class as PDF, on the learner's own head where it was measured.",
    details: [
      "TECHNIQUE is a technique file or the id of one of the house. Nothing is written before all are made.",
      "--language is the language of the handouts; sentences about the command are in that of --messages.",
    ],
    options: {
      names: "the class, CSV with the column name",
      heads:
        "their heads, CSV: name, and in mm length, breadth, height or around, over, front-to-nape; hairline if not round",
      paper: "a4 or letter; letter for en-US, else a4, if not given",
      out: "the folder to write to; made if it is not there",
      messages: "language of the sentences about the command; en-GB if not given",
    },
  },
  compare: {
    summary:
      "Learners' plans held against a model, section by section, by criteria, each against a tolerance.",
    details: [
      "MODEL is a plan, a technique file or the id of a technique of the house. It is laid on each learner's head: a technique",
      "by its measures, another plan point by point by the hairline. Sections are matched by kind, side and place, whatever",
      "their order. What is missing meets no criterion. Tolerances are assumptions, for the educator to set.",
    ],
    options: {
      names: "the class, CSV with the columns name and file",
      out: "where to write the table of the class, CSV",
      sheets: "folder for an assessment sheet of each as PDF; made if it is not there",
      within:
        "tolerances, a comma between: hairline=2,back=2,along=5 (mm), angle=10 (degrees), length=10 (%), depth=1,start=2 (mm)",
      paper: "paper of the sheets, a4 or letter; letter for en-US, else a4, if not given",
      messages: "language of the sentences about the command; en-GB if not given",
    },
  },
}
