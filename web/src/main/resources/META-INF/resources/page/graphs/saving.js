/**
 * Saves what a graph shows: its numbers as a table, its drawing as a picture.
 */

/**
 * Comma-separated values with a heading (RFC 4180): names with units, numbers with a point.
 * @param {readonly string[]} heads
 * @param {readonly (readonly (number | null)[])[]} columns
 */
export function csvOf(heads, columns) {
    const quoted = (/** @type {string} */ text) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
    const rows = (columns[0] ?? []).map((_, i) => columns.map((column) => column[i] ?? "").join(","));
    return [heads.map(quoted).join(","), ...rows].join("\r\n") + "\r\n";
}

/**
 * The drawing on the page's ground, with a line of words under it.
 * @param {HTMLCanvasElement} drawn
 * @param {string} words
 * @param {{ ground: string, ink: string }} colours
 * @returns {Promise<Blob | null>}
 */
export function pngOf(drawn, words, colours) {
    const scale = devicePixelRatio || 1;
    const canvas = document.createElement("canvas");
    canvas.width = drawn.width;
    canvas.height = drawn.height + 28 * scale;
    const pen = canvas.getContext("2d");
    if (!pen) return Promise.resolve(null);
    pen.fillStyle = colours.ground;
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(drawn, 0, 0);
    pen.fillStyle = colours.ink;
    pen.font = `${13 * scale}px system-ui, sans-serif`;
    pen.fillText(words, 8 * scale, drawn.height + 18 * scale, canvas.width - 16 * scale);
    return new Promise((done) => canvas.toBlob(done, "image/png"));
}

/** @param {Blob} blob @param {string} name */
export function save(blob, name) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
