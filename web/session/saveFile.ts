/**
 * Hands a file to the browser, to save where it saves things. An installed app hands it to the system's share sheet: there a
 * download opens a viewer without a way back (WebKit bugs 236943, 275288). The sheet opens only just after a tap, so what
 * takes long is made before it. Gives whether the file went out.
 */
export async function saveFile(content: BlobPart, name: string, type: string): Promise<boolean> {
  const file = new File([content], name, { type })
  if (!isInstalled() || !canShare(file)) return download(file)
  try {
    await navigator.share({ files: [file] })
    return true
  } catch (error) {
    return isCalledOff(error) ? false : download(file)
  }
}

/** Opened from the home screen, in a window of its own. */
export const isInstalled = () => matchMedia("(display-mode: standalone)").matches

export const canShare = (file: File) => navigator.canShare?.({ files: [file] }) ?? false

/** Whoever closes the system's share sheet has changed their mind; that is no fault. */
export const isCalledOff = (error: unknown) => error instanceof DOMException && error.name === "AbortError"

function download(file: File): true {
  const address = URL.createObjectURL(file)
  const link = document.createElement("a")
  link.href = address
  link.download = file.name
  link.click()
  // Some browsers fetch the address only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
  return true
}
