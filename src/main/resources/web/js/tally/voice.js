// Plays sounds and speaks. A sound is asked for only after its press is on the disk.

import { plainSounds, render } from "#js/tally/sounds.js"

/** @typedef {"off" | "tones" | "speech"} Mode */

/** Later than this a sound would be taken for that of another press: milliseconds. */
const TOO_LATE = 500

/**
 * @param {{ language: string, mode: Mode, shown: (words: string) => void }} wish
 *   shown: gets every sentence, whether it is heard or not
 */
export function createVoice({ language, mode, shown }) {
  /** @type {Map<string, AudioBuffer>} */
  const buffers = new Map()
  /** @type {AudioContext | undefined} */
  let context
  const speech = globalThis.speechSynthesis

  return {
    mode: () => mode,
    setMode: (/** @type {Mode} */ wanted) => (mode = wanted),
    /** Browsers give sound only after a press: to be called from one. */
    wake,
    play,
    say,
    /** @returns {boolean} whether this device speaks the language without asking a server */
    canSpeak: () => voiceOf() !== undefined,
    close: () => context?.close(),
  }

  function wake() {
    if (mode === "off") return
    const Context = globalThis.AudioContext
    if (!context && Context) {
      context = new Context({ latencyHint: "interactive" })
      for (const sound of plainSounds()) bufferOf({ sound })
    }
    if (context?.state === "suspended") context.resume()
  }

  /** The press that wakes the sound is heard as soon as there is one; older ones no more. */
  function playAwake(/** @type {any} */ what) {
    const asked = performance.now()
    const audio = /** @type {AudioContext} */ (context)
    audio.onstatechange = () => {
      if (audio.state !== "running") return
      audio.onstatechange = null
      if (performance.now() - asked < TOO_LATE) play(what)
    }
  }

  /**
   * @param {{ sound: string } | { mark: string, pest: number }} what
   * @returns {number} milliseconds until it is heard, as far as the browser tells; NaN: not at all
   */
  function play(what) {
    if (mode === "off" || !context) return NaN
    if (context.state !== "running") {
      playAwake(what)
      return NaN
    }
    const source = new AudioBufferSourceNode(context, { buffer: bufferOf(what) })
    source.connect(context.destination)
    source.start()
    return 1000 * ((context.baseLatency || 0) + (context.outputLatency || 0))
  }

  /** @param {{ sound: string } | { mark: string, pest: number }} what */
  function bufferOf(what) {
    const audio = /** @type {AudioContext} */ (context)
    const key = "sound" in what ? what.sound : what.mark + what.pest
    let buffer = buffers.get(key)
    if (!buffer) {
      const samples = render(what, audio.sampleRate)
      buffer = audio.createBuffer(1, samples.length, audio.sampleRate)
      buffer.copyToChannel(samples, 0)
      buffers.set(key, buffer)
    }
    return buffer
  }

  /** Says the newest sentence; an older one that still runs is cut off. */
  function say(/** @type {string} */ words) {
    shown(words)
    const voice = voiceOf()
    if (mode !== "speech" || !voice || words === "") return
    const utterance = new SpeechSynthesisUtterance(words)
    utterance.lang = language
    utterance.rate = 1.2
    utterance.voice = voice
    speech.cancel()
    speech.speak(utterance)
  }

  /** Only voices of the device itself: no sentence leaves it. */
  function voiceOf() {
    return speech
      ?.getVoices()
      .find((one) => one.localService && one.lang.toLowerCase().startsWith(language))
  }
}
