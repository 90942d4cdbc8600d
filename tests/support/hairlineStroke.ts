/** Along the hairline at the client's right, mm of the front view of the default head. */
export const hairlineStroke = [
  [-10, 90],
  [-22, 90],
  [-35, 88],
  [-48, 80],
  [-58, 70],
] as const
