/** Whether a key belongs to the field it is pressed in: letters, and that field's own undo. */
export const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLTextAreaElement ||
  target instanceof HTMLSelectElement ||
  (target instanceof HTMLInputElement && !["radio", "checkbox", "range"].includes(target.type))
