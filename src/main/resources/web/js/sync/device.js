// The name a device gives itself: random, made once, never typed. randomUUID would need https.

/**
 * @param {(bytes: Uint8Array<ArrayBuffer>) => Uint8Array} [random]
 * @returns {string} such as "phone-0f3a…", 32 hexadecimal digits
 */
export function newDeviceName(random = (bytes) => crypto.getRandomValues(bytes)) {
  const bytes = random(new Uint8Array(16))
  return "phone-" + [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("")
}
