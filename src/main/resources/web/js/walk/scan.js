// The camera where the browser reads QR codes itself; else a photo, made small and grey here and
// read by the server.

const LONGEST_SIDE = 1000
const PATIENCE = 15_000

/** @returns {Promise<boolean>} */
export async function canScan() {
  const detector = /** @type {any} */ (globalThis).BarcodeDetector
  if (!detector || !navigator.mediaDevices) return false
  return (await detector.getSupportedFormats()).includes("qr_code")
}

/**
 * @param {HTMLElement} place where the picture is shown
 * @param {string} words
 * @param {(text: string) => void} found
 * @returns {Promise<() => void>} ends it
 */
export async function scan(place, words, found) {
  const detector = new /** @type {any} */ (globalThis).BarcodeDetector({ formats: ["qr_code"] })
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } })
  const video = document.createElement("video")
  video.setAttribute("playsinline", "")
  video.setAttribute("aria-label", words)
  video.srcObject = stream
  place.replaceChildren(video)
  await video.play()
  const look = setInterval(async () => {
    const [code] = await detector.detect(video)
    if (code) found(code.rawValue)
  }, 250)
  return () => {
    clearInterval(look)
    stream.getTracks().forEach((track) => track.stop())
  }
}

/**
 * @param {Blob} photo
 * @param {string} address
 * @param {string} token
 * @returns {Promise<{ text?: string, fault?: "none" | "unreachable" | "no-photo" }>}
 */
export async function readPhoto(photo, address, token) {
  const grey = await greyOf(photo).catch(() => undefined)
  if (!grey) return { fault: "no-photo" }
  try {
    const answer = await fetch(`${address}?width=${grey.width}`, {
      method: "POST",
      headers: { "Content-Type": "application/octet-stream", "Jarwise-Form": token },
      body: grey.bytes,
      signal: AbortSignal.timeout(PATIENCE),
    })
    if (!answer.ok) return { fault: "unreachable" }
    const { code } = await answer.json()
    return code ? { text: code } : { fault: "none" }
  } catch (failure) {
    console.info("The photo was not read", failure)
    return { fault: "unreachable" }
  }
}

/** @param {Blob} photo */
async function greyOf(photo) {
  const picture = await createImageBitmap(photo)
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height))
  const width = Math.max(1, Math.round(picture.width * scale))
  const height = Math.max(1, Math.round(picture.height * scale))
  const canvas = document.createElement("canvas")
  canvas.width = width
  canvas.height = height
  const drawing = canvas.getContext("2d", { willReadFrequently: true })
  if (!drawing) throw new Error("No canvas")
  drawing.drawImage(picture, 0, 0, width, height)
  const { data } = drawing.getImageData(0, 0, width, height)
  const bytes = new Uint8Array(width * height)
  for (let i = 0; i < bytes.length; i++) {
    const [red, green, blue] = [data[4 * i], data[4 * i + 1], data[4 * i + 2]]
    bytes[i] = Math.round(0.299 * red + 0.587 * green + 0.114 * blue)
  }
  return { width, bytes }
}
