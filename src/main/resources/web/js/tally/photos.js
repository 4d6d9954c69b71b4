// Photos of vouchers: made small here, kept here until the server has them.

const LONGEST_SIDE = 1600
const QUALITY = 0.85

/**
 * @param {Blob} photo as the camera gave it
 * @returns {Promise<{ hash: string, photo: Blob }>}
 */
export async function smallPhoto(photo) {
  const picture = await createImageBitmap(photo)
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height))
  const canvas = document.createElement("canvas")
  canvas.width = Math.max(1, Math.round(picture.width * scale))
  canvas.height = Math.max(1, Math.round(picture.height * scale))
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height)
  const small = await new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error("No picture"))),
      "image/jpeg",
      QUALITY,
    ),
  )
  const digest = await crypto.subtle.digest("SHA-256", await small.arrayBuffer())
  const hash = [...new Uint8Array(digest)].map((b) => b.toString(16).padStart(2, "0")).join("")
  return { hash, photo: small }
}

/** Answers about one photo alone: the others may be taken all the same. */
const ABOUT_THIS_ONE = [413, 422]

/**
 * Sends what waits; a photo is dropped here only after the server has it.
 *
 * @param {any} log
 * @param {string} address
 * @param {string} token
 */
export async function sendPhotos(log, address, token) {
  for (const hash of await log.photos()) {
    try {
      const answer = await fetch(`${address}/${hash}`, {
        method: "POST",
        headers: { "Content-Type": "image/jpeg", "Jarwise-Form": token },
        body: await log.photo(hash),
      })
      if (answer.ok) await log.dropPhoto(hash)
      else console.warn("A photo was not taken", answer.status)
      if (!answer.ok && !ABOUT_THIS_ONE.includes(answer.status)) return
    } catch (failure) {
      return console.info("A photo waits", failure)
    }
  }
}
