// Width and height of a picture from its header, without decoding, by what the bytes are and not by what anybody called them.

/** @param {ArrayBuffer} bytes @returns {{width:number, height:number}|{}} */
export function dimensionsOf(bytes) {
  const view = new DataView(bytes);
  try {
    const size = view.byteLength < 16 ? null
      : view.getUint16(0) === 0xffd8 ? jpeg(view)
        : view.getUint32(0) === 0x89504e47 ? { width: view.getUint32(16), height: view.getUint32(20) }
          : view.getUint32(0) === 0x52494646 && view.getUint32(8) === 0x57454250 ? webp(view) : null;
    return size && size.width > 0 && size.height > 0 ? size : {};
  } catch (error) {
    // A length that points outside the file: nothing can be said.
    if (error instanceof RangeError) return {};
    throw error;
  }
}

/** The segments of a JPEG file (ISO/IEC 10918-1, annex B). @param {DataView} view */
function jpeg(view) {
  for (let at = 2; ;) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) { at++; continue; }
    if (marker === 0xda) return null;
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    at += 2 + view.getUint16(at + 2);
  }
}

/** The first chunk of a WebP file that has a size (RFC 9649, section 2). @param {DataView} view */
function webp(view) {
  for (let at = 12; ;) {
    const name = view.getUint32(at);
    if (name === 0x56503858) return { width: 1 + three(view, at + 12), height: 1 + three(view, at + 15) };
    if (name === 0x56503820) return { width: view.getUint16(at + 14, true) & 0x3fff, height: view.getUint16(at + 16, true) & 0x3fff };
    if (name === 0x5650384c) return { width: 1 + (view.getUint32(at + 9, true) & 0x3fff), height: 1 + (view.getUint32(at + 9, true) >>> 14 & 0x3fff) };
    const length = view.getUint32(at + 4, true);
    at += 8 + length + (length & 1);
  }
}

/** @param {DataView} view @param {number} at */
function three(view, at) { return view.getUint16(at, true) | view.getUint8(at + 2) << 16; }
