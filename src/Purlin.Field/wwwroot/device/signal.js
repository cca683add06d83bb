// Tells by more than eyes: a short sound and, where the phone can, a short buzz. They follow the system's mute.

/** @type {AudioContext|null} */
let audio = null;

/** @param {'kept'|'undone'|'refused'} what */
export function signal(what) {
  navigator.vibrate?.(what === 'refused' ? [40, 60, 40] : 20);
  if (localStorage.getItem('purlin-quiet') === 'yes') return;
  try {
    audio ??= new AudioContext();
    const tone = audio.createOscillator();
    const loudness = audio.createGain();
    tone.frequency.value = { kept: 880, undone: 440, refused: 220 }[what];
    loudness.gain.value = 0.05;
    tone.connect(loudness).connect(audio.destination);
    tone.start();
    tone.stop(audio.currentTime + (what === 'refused' ? 0.18 : 0.06));
  } catch {
    // No sound here: the tick on the screen says the same.
  }
}
