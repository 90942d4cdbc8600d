import type { Tools } from "../../tools"

/** The text of a handout, where an educator changes it. */
export const lesson = (t: Tools) => ({
  edit: "Change its text…",
  asDrawn: "Back to what the plan says",
  title: "What the class reads",
  name: "Title",
  aim: "Aim",
  tools: "Tools, one a line",
  steps: "How it is done, a step a line",
  checks: "Check your own work, one a line",
  faults: "Common faults",
  addFault: "Add a fault",
  remove: "Remove",
  removeFault: (number: number) => `Remove fault ${t.whole(number)}`,
  follows:
    "What you leave as it stands goes on following the plan. The class reads it: write nothing of a client into it.",
  keep: "Save this text",
})
