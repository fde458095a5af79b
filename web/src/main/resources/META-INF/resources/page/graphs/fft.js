/**
 * Spectra of evenly sampled signals: own radix-2 transform (Cooley and Tukey 1965), Hann window, amplitudes as they stand in the signal.
 */

/**
 * Transforms in place; the length is a power of two. Sign of the exponent negative, no factor.
 * @param {Float64Array} re
 * @param {Float64Array} im
 */
export function transform(re, im) {
    const n = re.length;
    if (n === 0 || (n & (n - 1)) !== 0 || im.length !== n) throw new Error(`transform: ${n} samples were given; a power of two in both parts is right`);
    for (let i = 1, j = 0; i < n; i++) {
        let bit = n >> 1;
        for (; j & bit; bit >>= 1) j ^= bit;
        j ^= bit;
        if (i < j) {
            [re[i], re[j]] = [re[j], re[i]];
            [im[i], im[j]] = [im[j], im[i]];
        }
    }
    for (let size = 2; size <= n; size <<= 1) {
        const half = size >> 1;
        for (let k = 0; k < half; k++) {
            const angle = (-2 * Math.PI * k) / size;
            const c = Math.cos(angle);
            const s = Math.sin(angle);
            for (let i = k; i < n; i += size) {
                const j = i + half;
                const a = re[j] * c - im[j] * s;
                const b = re[j] * s + im[j] * c;
                re[j] = re[i] - a;
                im[j] = im[i] - b;
                re[i] += a;
                im[i] += b;
            }
        }
    }
}

/** Hann window, periodic. @param {number} n */
export const hann = (n) => Float64Array.from({ length: n }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / n));

/**
 * Amplitudes of the oscillations in a signal, mean taken off: a sine of amplitude 1 on a line shows as 1, off a line at least as 0.85
 * (Hann's scalloping, Harris 1978).
 * @param {Float64Array} samples a power of two of them
 * @param {number} interval s
 * @returns {{ frequencies: Float64Array, amplitudes: Float64Array, resolution: number }} Hz, the signal's unit, Hz between lines
 */
export function spectrumOf(samples, interval) {
    const n = samples.length;
    const window = hann(n);
    const mean = samples.reduce((sum, value) => sum + value, 0) / n;
    const re = samples.map((value, i) => (value - mean) * window[i]);
    const im = new Float64Array(n);
    transform(re, im);
    const half = n / 2;
    const resolution = 1 / (n * interval);
    const gain = 4 / n; // one-sided, over Hann's mean of one half
    return {
        frequencies: Float64Array.from({ length: half }, (_, i) => i * resolution),
        amplitudes: Float64Array.from({ length: half }, (_, i) => gain * Math.sqrt(re[i] * re[i] + im[i] * im[i])),
        resolution,
    };
}

/**
 * Samples at even times from samples at uneven ones, straight between them. Null when the stretch is not covered, or has gaps.
 * @param {ArrayLike<number>} times s, rising
 * @param {ArrayLike<number>} values
 * @param {number} count
 * @param {number} interval s
 * @returns {Float64Array | null} the newest `count` samples
 */
export function evenly(times, values, count, interval) {
    const last = times.length - 1;
    const until = times[last];
    const from = until - (count - 1) * interval;
    if (!(last > 0) || times[0] > from + interval / 2) return null;
    const even = new Float64Array(count);
    let at = last;
    for (let i = count - 1; i >= 0; i--) {
        const time = from + i * interval;
        while (at > 1 && times[at - 1] > time) at--;
        const span = times[at] - times[at - 1];
        if (!(span < 4 * interval)) return null;
        const share = Math.max(0, (time - times[at - 1]) / span);
        even[i] = values[at - 1] + (values[at] - values[at - 1]) * share;
        if (!Number.isFinite(even[i])) return null;
    }
    return even;
}

/**
 * Amplitude of one frequency in evenly sampled values (Hann window, mean taken off): the transform at one place that need not be a line.
 * @param {Float64Array} samples
 * @param {number} interval s
 * @param {number} frequency Hz
 */
export function amplitudeAt(samples, interval, frequency) {
    const n = samples.length;
    const mean = samples.reduce((sum, value) => sum + value, 0) / n;
    let re = 0;
    let im = 0;
    for (let i = 0; i < n; i++) {
        const weighted = (samples[i] - mean) * (0.5 - 0.5 * Math.cos((2 * Math.PI * i) / n));
        const angle = 2 * Math.PI * frequency * interval * i;
        re += weighted * Math.cos(angle);
        im += weighted * Math.sin(angle);
    }
    return (4 / n) * Math.sqrt(re * re + im * im);
}

/**
 * Where the pistons of a shaft are heard: orders N, 2N, … of its turns.
 * @param {number} speed rad/s
 * @param {number} pistons
 * @param {number} count
 * @returns {{ order: number, frequency: number }[]} Hz
 */
export const pistonPasses = (speed, pistons, count) =>
    Array.from({ length: count }, (_, k) => ({ order: (k + 1) * pistons, frequency: ((k + 1) * pistons * Math.abs(speed)) / (2 * Math.PI) }));
