// A tone when the time has come, two when it is over. Made after a press, as browsers want it.

/** @returns {{ ring: (times: number) => void, close: () => void }} */
export function startSound() {
  const Context = globalThis.AudioContext
  if (!Context) return { ring: () => {}, close: () => {} }
  const context = new Context()
  return {
    ring(times) {
      for (let i = 0; i < times; i++) tone(context, context.currentTime + i * 0.4)
    },
    close() {
      // The last tone may still sound while the next screen is there.
      setTimeout(() => context.close(), 1200)
    },
  }
}

function tone(/** @type {AudioContext} */ context, /** @type {number} */ at) {
  const source = new OscillatorNode(context, { frequency: 880 })
  const volume = new GainNode(context, { gain: 0 })
  volume.gain.setValueAtTime(0, at)
  volume.gain.linearRampToValueAtTime(0.6, at + 0.02)
  volume.gain.linearRampToValueAtTime(0, at + 0.3)
  source.connect(volume).connect(context.destination)
  source.start(at)
  source.stop(at + 0.32)
}
