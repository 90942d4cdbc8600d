import contents from "./examplePlan.partline.json"

/** The text of an invented, finished face frame, to open like any other file. */
export const examplePlanText = JSON.stringify(contents)
