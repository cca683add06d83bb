// A sound note: recorded here, kept like a photograph, written down later by a person. Nothing is sent to any recogniser.

/** @type {{recorder: MediaRecorder, parts: Blob[], started: number, stream: MediaStream}|null} */
let running = null;

export function isRecording() { return running !== null; }
export function seconds() { return running ? (performance.now() - running.started) / 1000 : 0; }

/** @returns {Promise<string>} why it did not start; empty when it runs */
export async function startSound() {
  if (running) return '';
  if (!navigator.mediaDevices?.getUserMedia || !('MediaRecorder' in globalThis)) return 'This browser records no sound here. Write the words instead.';
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
    const recorder = new MediaRecorder(stream);
    /** @type {Blob[]} */
    const parts = [];
    recorder.ondataavailable = event => { if (event.data.size > 0) parts.push(event.data); };
    recorder.start(1000);
    running = { recorder, parts, started: performance.now(), stream };
    return '';
  } catch {
    return 'The microphone is not allowed here. Write the words instead, or allow it in the browser’s site settings.';
  }
}

/** @returns {Promise<{blob:Blob, seconds:number}|null>} */
export async function stopSound() {
  if (!running) return null;
  const { recorder, parts, started, stream } = running;
  running = null;
  const length = (performance.now() - started) / 1000;
  await new Promise(resolve => {
    recorder.onstop = resolve;
    recorder.stop();
  });
  stream.getTracks().forEach(track => track.stop());
  return { blob: new Blob(parts, { type: recorder.mimeType }), seconds: Math.round(length * 10) / 10 };
}
