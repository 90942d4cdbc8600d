/**
 * The colour wheel as it is taught, twelve names round it, each across from the tone that neutralises it (common practice).
 * The hues are a picture of the words for the screen, not a measured colour.
 */
export const toneWheel = [
  { name: "yellow", hue: "#e3c73b" },
  { name: "yellow-orange", hue: "#dda03a" },
  { name: "orange", hue: "#d07a34" },
  { name: "red-orange", hue: "#bd5430" },
  { name: "red", hue: "#a8342f" },
  { name: "red-violet", hue: "#86304f" },
  { name: "violet", hue: "#64407f" },
  { name: "blue-violet", hue: "#4a4b93" },
  { name: "blue", hue: "#2f6199" },
  { name: "blue-green", hue: "#2c7477" },
  { name: "green", hue: "#3f7d45" },
  { name: "yellow-green", hue: "#93a63c" },
] as const
export type WheelName = (typeof toneWheel)[number]["name"]
