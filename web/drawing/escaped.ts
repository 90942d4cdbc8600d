const escapes: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" }

/** A text as it may stand in markup, between tags and between quotation marks. */
export const escaped = (text: string) => text.replace(/[&<>"]/g, (letter) => escapes[letter])
