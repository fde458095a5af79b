/**
 * How things look: matt paper-like solids whose cut faces are hatched, oil that wears the colour of its pressure with the pattern of its band,
 * and lines. Colours come from the page's style as sRGB and are written as they are: no lighting model stands between a number and its colour.
 *
 * A cut face costs no extra drawing: all bodies are closed, so where the section plane opens one, its inside is seen; it is painted as the
 * plane would be, by the point where the line of sight meets the plane.
 */
import { Color, DoubleSide, FrontSide, ShaderMaterial, Vector3, Vector4 } from "three";

const VERTEX = /* glsl */ `
#ifdef OIL
attribute float band; // of an instance
uniform float bandAll; // of a single body
varying float vBand;
#ifdef FLOWING
attribute float along;
varying float vAlong;
#endif
#endif
#ifdef CUT
varying vec3 vPlace;
#endif
varying vec2 vShade; // light from above; 0 at the rim, where a body turns away
varying vec3 vTint;
void main() {
    vec4 place = vec4(position, 1.0);
    vTint = vec3(1.0);
#ifdef USE_INSTANCING
    place = instanceMatrix * place;
#endif
#ifdef USE_INSTANCING_COLOR
    vTint = instanceColor;
#endif
#ifdef OIL
    vBand = band + bandAll;
#ifdef FLOWING
    vAlong = along;
#endif
#endif
    vec4 world = modelMatrix * place;
    gl_Position = projectionMatrix * viewMatrix * world;
#ifdef CUT
    vPlace = world.xyz;
#endif
#ifdef SHADED
    vec3 n = normal;
#ifdef USE_INSTANCING
    n = mat3(instanceMatrix) * n;
#endif
    n = normalize(mat3(modelMatrix) * n);
    vShade = vec2(0.76 + 0.2 * dot(n, vec3(0.36, 0.8, 0.48)) + 0.06 * n.z, smoothstep(0.0, 0.32, abs(dot(n, normalize(cameraPosition - world.xyz)))));
#else
    vShade = vec2(1.0);
#endif
}`;

const COMMON = /* glsl */ `
uniform vec3 tone;
uniform vec3 ink;
uniform vec3 paper;
uniform vec4 cut;
uniform vec4 look; // x opacity, y highlight, z hatch angle, w mm a pixel
uniform vec3 glow;
#ifdef CUT
varying vec3 vPlace;
#endif
varying vec2 vShade;
varying vec3 vTint;
`;

const SOLID = `${COMMON}${
    /* glsl */ `
void main() {
    vec3 base = tone * vTint;
    vec3 colour = mix(mix(ink, base, 0.5), base, vShade.y) * vShade.x;
#ifdef CUT
    if (dot(vPlace, cut.xyz) > cut.w) discard;
    if (!gl_FrontFacing) {
        vec3 eye = cameraPosition - vPlace;
        float share = (cut.w - dot(vPlace, cut.xyz)) / dot(eye, cut.xyz);
        vec3 at = vPlace + eye * share;
        vec3 u = abs(cut.y) > 0.7 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
        vec3 v = cross(cut.xyz, u);
        float across = dot(at, u) * cos(look.z) + dot(at, v) * sin(look.z);
        float gap = max(2.4, 6.5 * look.w);
        float from = abs(fract(across / gap) - 0.5) * gap / look.w;
        float depth = distance(at, vPlace); // of the body behind the plane: nothing at the cut's edge
        float edge = smoothstep(1.0, 2.2, depth / max(fwidth(depth), 1e-6));
        colour = mix(ink, mix(paper, tone, 0.3), smoothstep(0.5, 1.3, from) * edge);
    }
#endif
    gl_FragColor = vec4(mix(colour, glow, look.y), look.x);
}`
}`;

const OIL = `${COMMON}${
    /* glsl */ `
uniform vec2 flow; // x how far the marks have gone, mm; y how clear they are
varying float vBand;
#ifdef FLOWING
varying float vAlong;
#endif
void main() {
#ifdef CUT
    if (dot(vPlace, cut.xyz) > cut.w) discard;
#endif
    vec3 base = tone * vTint;
    vec3 colour = gl_FrontFacing ? base * vShade.x : base;
    vec3 mark = dot(base, vec3(0.3, 0.6, 0.1)) > 0.5 ? vec3(0.0) : vec3(1.0);
    vec2 p = gl_FragCoord.xy;
    float on = 0.0;
    if (vBand < 0.5) on = step(length(mod(p, 7.0) - 3.5), 1.3);
    else if (vBand > 1.5) on = step(mod(p.x + p.y, max(3.0, 15.0 - 2.0 * vBand)), 1.0);
    colour = mix(colour, mark, 0.3 * on);
#ifdef FLOWING
    float place = abs(fract((vAlong - flow.x) / 9.0) - 0.5) * 2.0;
    colour = mix(colour, mark, flow.y * 0.55 * step(0.72, place));
#endif
    gl_FragColor = vec4(mix(colour, glow, look.y), look.x);
}`
}`;

const LINE = /* glsl */ `
uniform vec3 tone;
uniform vec4 cut;
uniform vec4 look;
#ifdef CUT
varying vec3 vPlace;
#endif
void main() {
#ifdef CUT
    if (dot(vPlace, cut.xyz) > cut.w) discard;
#endif
    gl_FragColor = vec4(tone, look.x);
}`;

/** The page's colours as three numbers each, read from its style. */
export class Palette {
    /** @param {Element} host */
    constructor(host) {
        const style = getComputedStyle(host);
        /** @param {string} name @param {string} otherwise */
        const read = (name, otherwise) => {
            const colour = new Color().setStyle(style.getPropertyValue(name).trim() || otherwise, "");
            return colour;
        };
        this.paper = read("--paper", "#f7f5ef");
        this.ink = read("--ink", "#1c2126");
        this.soft = read("--ink-soft", "#5a626a");
        this.accent = read("--accent", "#0b62a8");
        this.warn = read("--warn", "#a33b00");
        this.dark = luminance(this.paper) < 0.35;
    }

    /** A grey of the drawing: 0 paper, 1 ink; warmer or colder by a little. @param {number} weight @param {number} [warmth] */
    tone(weight, warmth = 0) {
        const base = this.dark ? new Color(0.62, 0.64, 0.66) : new Color(0.93, 0.925, 0.91);
        const deep = this.dark ? new Color(0.2, 0.22, 0.24) : new Color(0.42, 0.44, 0.46);
        const colour = base.lerp(deep, weight);
        colour.r += 0.05 * warmth;
        colour.b -= 0.06 * warmth;
        return colour;
    }
}

/** @param {Color} colour */
const luminance = (colour) => 0.2126 * colour.r + 0.7152 * colour.g + 0.0722 * colour.b;

/** Uniforms that all materials of one machine share. */
export class Looks {
    /** @param {Palette} palette */
    constructor(palette) {
        this.palette = palette;
        this.cut = { value: new Vector4(1, 0, 0, 1e9) };
        this.ink = { value: palette.ink };
        this.paper = { value: palette.paper };
        /** @type {ShaderMaterial[]} */
        this.all = [];
        this.cutting = false;
        this.pixel = 0.3;
    }

    /** @param {Color} tone @param {number} hatch angle of its hatching, rad */
    solid(tone, hatch = Math.PI / 4) {
        return this.#make(SOLID, tone, hatch, { SHADED: "" });
    }

    /** Oil; `flowing` bodies carry marks along their length. @param {boolean} flowing */
    oil(flowing) {
        return this.#make(OIL, new Color(1, 1, 1), 0, flowing ? { OIL: "", SHADED: "", FLOWING: "" } : { OIL: "", SHADED: "" });
    }

    /** @param {string} fragment @param {Color} tone @param {number} hatch @param {Record<string, string>} defines */
    #make(fragment, tone, hatch, defines) {
        const material = new ShaderMaterial({
            vertexShader: VERTEX,
            fragmentShader: fragment,
            defines: { ...defines },
            side: FrontSide,
            forceSinglePass: true,
            uniforms: {
                tone: { value: tone },
                ink: this.ink,
                paper: this.paper,
                cut: this.cut,
                look: { value: new Vector4(1, 0, hatch, this.pixel) },
                glow: { value: new Vector3().setFromColor(this.palette.accent) },
                flow: { value: { x: 0, y: 0 } },
                bandAll: { value: 0 },
            },
        });
        this.all.push(material);
        this.#define(material);
        return material;
    }

    /** Lines take part in the cut as well. @param {number} opacity @param {Color} [colour] */
    line(opacity, colour = this.palette.ink) {
        const material = this.#make(LINE, colour, 0, {});
        material.uniforms.look.value.x = opacity;
        material.transparent = true;
        return material;
    }

    /** @param {boolean} cutting */
    setCutting(cutting) {
        if (cutting === this.cutting) return;
        this.cutting = cutting;
        for (const material of this.all) this.#define(material);
    }

    /** Whether the plane passes a body by although it would meet it. @param {ShaderMaterial} material @param {boolean} spared */
    spare(material, spared) {
        material.userData.spared = spared;
        this.#define(material);
    }

    /** @param {ShaderMaterial} material */
    #define(material) {
        const has = "CUT" in material.defines;
        const cuts = this.cutting && !material.userData.spared;
        if (has === cuts) return;
        if (cuts) material.defines.CUT = "";
        else delete material.defines.CUT;
        material.side = cuts ? DoubleSide : FrontSide; // insides are seen only where a body is cut open
        material.needsUpdate = true;
    }

    dispose() {
        for (const material of this.all) material.dispose();
    }
}
