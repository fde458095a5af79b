/** Oils by grade: the two viscosities that describe one, as in the project's oil list (middle of common data sheets, inside ISO 3448 or SAE J300). */
export const OILS = Object.freeze([
    { name: "SAE 20W-50", cool: 165e-6, warm: 18.5e-6 },
    { name: "SAE 15W-50", cool: 125e-6, warm: 18e-6 },
    { name: "SAE 10W-40", cool: 95e-6, warm: 14.3e-6 },
    { name: "SAE 10W-30", cool: 68e-6, warm: 10.6e-6 },
    { name: "SAE 5W-30", cool: 62e-6, warm: 10.6e-6 },
    { name: "ISO VG 32", cool: 32e-6, warm: 5.4e-6 },
    { name: "ISO VG 46", cool: 46e-6, warm: 6.8e-6 },
    { name: "ISO VG 68", cool: 68e-6, warm: 8.7e-6 },
    { name: "ISO VG 100", cool: 100e-6, warm: 11.3e-6 },
]); // m²/s at 40 and 100 °C
