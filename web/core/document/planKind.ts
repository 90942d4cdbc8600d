/** What a plan's file calls itself. */
export const planKind = "partline-plan"
export const planVersion = 2
