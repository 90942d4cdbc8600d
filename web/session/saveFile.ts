/** Hands a file to the browser, to save where it saves things. */
export function saveFile(content: BlobPart, name: string, type: string) {
  const address = URL.createObjectURL(new Blob([content], { type }))
  const link = document.createElement("a")
  link.href = address
  link.download = name
  link.click()
  // Some browsers fetch the address only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
