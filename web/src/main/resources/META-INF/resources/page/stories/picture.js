/**
 * A state as a picture to keep or print: what the scene shows, its notes, name and words below.
 */

const MARGIN = 24; // px
const LINE = 1.35; // heights of a letter
const TITLE = 26; // px
const BODY = 17; // px

/**
 * @param {Blob} scene what the scene drew
 * @param {{ anchor(part: string): { x: number, y: number } | null }} anchors
 * @param {readonly import("./story.js").Mark[]} marks
 * @param {string} name
 * @param {string} words live values already in them
 * @param {{ paper: string, ink: string, family: string }} look
 * @returns {Promise<Blob>} PNG
 */
export async function pictureOf(scene, anchors, marks, name, words, look) {
    const drawn = await createImageBitmap(scene);
    const canvas = document.createElement("canvas");
    const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d"));
    const width = drawn.width;
    const scale = Math.max(1, width / 1200);
    pen.font = `${BODY * scale}px ${look.family}`;
    const lines = words.split("\n").flatMap((paragraph) => wrapped(pen, paragraph, width - 2 * MARGIN * scale));
    const below = MARGIN * scale * 2 + TITLE * scale * LINE + lines.length * BODY * scale * LINE;
    canvas.width = width;
    canvas.height = drawn.height + Math.ceil(below);

    pen.fillStyle = look.paper;
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(drawn, 0, 0);
    pen.textBaseline = "top";
    for (const mark of marks) note(pen, mark, anchors, drawn.width, drawn.height, scale, look);

    pen.fillStyle = look.ink;
    pen.font = `600 ${TITLE * scale}px ${look.family}`;
    pen.fillText(name, MARGIN * scale, drawn.height + MARGIN * scale, width - 2 * MARGIN * scale);
    pen.font = `${BODY * scale}px ${look.family}`;
    const start = drawn.height + MARGIN * scale + TITLE * scale * LINE;
    lines.forEach((line, row) => pen.fillText(line, MARGIN * scale, start + row * BODY * scale * LINE));
    return new Promise((done, fail) => canvas.toBlob((blob) => (blob ? done(blob) : fail(new Error("no picture"))), "image/png"));
}

/**
 * @param {CanvasRenderingContext2D} pen
 * @param {import("./story.js").Mark} mark
 * @param {{ anchor(part: string): { x: number, y: number } | null }} anchors
 * @param {number} width
 * @param {number} height
 * @param {number} scale
 * @param {{ paper: string, ink: string, family: string }} look
 */
function note(pen, mark, anchors, width, height, scale, look) {
    const x = mark.x * width;
    const y = mark.y * height;
    const to = mark.part ? anchors.anchor(mark.part) : null;
    pen.strokeStyle = look.ink;
    pen.lineWidth = 1.4 * scale;
    if (to) {
        pen.beginPath();
        pen.moveTo(x, y);
        pen.lineTo(to.x * width, to.y * height);
        pen.stroke();
    }
    pen.font = `${BODY * scale}px ${look.family}`;
    const lines = wrapped(pen, mark.text, width * 0.3);
    const wide = Math.max(...lines.map((line) => pen.measureText(line).width)) + 16 * scale;
    const high = lines.length * BODY * scale * LINE + 8 * scale;
    pen.fillStyle = look.paper;
    pen.fillRect(x - wide / 2, y - high / 2, wide, high);
    pen.strokeRect(x - wide / 2, y - high / 2, wide, high);
    pen.fillStyle = look.ink;
    lines.forEach((line, row) => pen.fillText(line, x - wide / 2 + 8 * scale, y - high / 2 + 4 * scale + row * BODY * scale * LINE));
}

/**
 * @param {CanvasRenderingContext2D} pen
 * @param {string} text
 * @param {number} width
 * @returns {string[]}
 */
function wrapped(pen, text, width) {
    const lines = [""];
    for (const word of text.split(" ")) {
        const longer = lines[lines.length - 1] === "" ? word : `${lines[lines.length - 1]} ${word}`;
        if (pen.measureText(longer).width <= width) lines[lines.length - 1] = longer;
        else lines.push(word);
    }
    return lines;
}
