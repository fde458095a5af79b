/**
 * How things look: matt paper-like solids whose cut faces are hatched, oil that wears the colour of its pressure with the pattern of its band,
 * and lines. Colours come from the page's style as sRGB and are written as they are: no lighting model stands between a number and its colour.
 *
 * A cut face costs no extra drawing: all bodies are closed, so where the section plane opens one, its inside is seen; it is painted as the
 * plane would be, by the point where the line of sight meets the plane.
 */
import { Color, DoubleSide, LineBasicMaterial, ShaderMaterial, Vector3, Vector4 } from "three";

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
varying vec3 vNormal;
varying vec3 vPlace;
varying vec3 vTint;
void main() {
    vec4 place = vec4(position, 1.0);
    vec3 turned = normal;
    vTint = vec3(1.0);
#ifdef USE_INSTANCING
    place = instanceMatrix * place;
    turned = mat3(instanceMatrix) * turned;
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
    vPlace = world.xyz;
    vNormal = mat3(modelMatrix) * turned;
    gl_Position = projectionMatrix * viewMatrix * world;
}`;

const COMMON = /* glsl */ `
uniform vec3 tone;
uniform vec3 ink;
uniform vec3 paper;
uniform vec4 cut;
uniform vec4 look; // x opacity, y highlight, z hatch angle, w mm a pixel
uniform vec3 glow;
varying vec3 vNormal;
varying vec3 vPlace;
varying vec3 vTint;
vec3 lit(vec3 base) {
    vec3 n = normalize(vNormal);
    vec3 eye = normalize(cameraPosition - vPlace);
    float light = 0.74 + 0.2 * dot(n, vec3(0.36, 0.8, 0.48)) + 0.08 * n.z;
    float rim = smoothstep(0.05, 0.3, abs(dot(n, eye)));
    return mix(mix(ink, base, 0.55), base, rim) * light;
}`;

const SOLID = `${COMMON}${/* glsl */ `
void main() {
#ifdef CUT
    if (dot(vPlace, cut.xyz) > cut.w) discard;
#endif
    vec3 colour;
    if (gl_FrontFacing) {
        colour = lit(tone * vTint);
    } else {
#ifdef CUT
        vec3 eye = cameraPosition - vPlace;
        float share = (cut.w - dot(vPlace, cut.xyz)) / dot(eye, cut.xyz);
        vec3 at = vPlace + eye * share;
        vec3 u = abs(cut.y) > 0.7 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
        vec3 v = cross(cut.xyz, u);
        float across = dot(at, u) * cos(look.z) + dot(at, v) * sin(look.z);
        float gap = max(2.6, 6.5 * look.w);
        float from = abs(fract(across / gap) - 0.5) * gap / look.w;
        colour = mix(ink, mix(paper, tone, 0.35), smoothstep(0.5, 1.3, from));
#else
        colour = tone * vTint * 0.45;
#endif
    }
    colour = mix(colour, glow, look.y);
    gl_FragColor = vec4(colour, look.x);
}`}`;

const OIL = `${COMMON}${/* glsl */ `
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
    vec3 n = normalize(vNormal);
    vec3 colour = base;
    if (gl_FrontFacing) colour *= 0.9 + 0.1 * dot(n, vec3(0.36, 0.8, 0.48));
    float dark = dot(base, vec3(0.3, 0.6, 0.1)) > 0.5 ? 0.0 : 1.0;
    vec3 mark = mix(vec3(0.0), vec3(1.0), dark);
    vec2 p = gl_FragCoord.xy;
    float on = 0.0;
    if (vBand < 0.5) on = step(length(mod(p, 7.0) - 3.5), 1.3);
    else if (vBand > 1.5) on = step(mod(p.x + p.y, max(3.0, 15.0 - 2.0 * vBand)), 1.0);
    colour = mix(colour, mark, 0.34 * on);
#ifdef FLOWING
    float place = abs(fract((vAlong - flow.x) / 9.0) - 0.5) * 2.0;
    colour = mix(colour, mark, flow.y * 0.55 * step(0.72, place));
#endif
    colour = mix(colour, glow, look.y);
    gl_FragColor = vec4(colour, look.x);
}`}`;

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
        return this.#make(SOLID, tone, hatch, {});
    }

    /** Oil; `flowing` bodies carry marks along their length. @param {boolean} flowing */
    oil(flowing) {
        return this.#make(OIL, new Color(1, 1, 1), 0, flowing ? { OIL: "", FLOWING: "" } : { OIL: "" });
    }

    /** @param {string} fragment @param {Color} tone @param {number} hatch @param {Record<string, string>} defines */
    #make(fragment, tone, hatch, defines) {
        const material = new ShaderMaterial({
            vertexShader: VERTEX,
            fragmentShader: fragment,
            defines: { ...defines },
            side: DoubleSide,
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
        const material = new LineBasicMaterial({ color: colour, transparent: opacity < 1, opacity });
        material.onBeforeCompile = (shader) => {
            shader.uniforms.cut = this.cut;
            shader.vertexShader = shader.vertexShader
                .replace("void main() {", "varying vec3 vPlace;\nvoid main() {")
                .replace("#include <project_vertex>", "#include <project_vertex>\nvec4 placed = vec4(transformed, 1.0);\n#ifdef USE_INSTANCING\nplaced = instanceMatrix * placed;\n#endif\nvPlace = (modelMatrix * placed).xyz;");
            shader.fragmentShader = shader.fragmentShader
                .replace("void main() {", "uniform vec4 cut;\nvarying vec3 vPlace;\nvoid main() {\nif (dot(vPlace, cut.xyz) > cut.w) discard;")
                .replace("#include <colorspace_fragment>", "");
        };
        return material;
    }

    /** @param {boolean} cutting */
    setCutting(cutting) {
        if (cutting === this.cutting) return;
        this.cutting = cutting;
        for (const material of this.all) this.#define(material);
    }

    /** @param {ShaderMaterial} material */
    #define(material) {
        const has = "CUT" in material.defines;
        if (has === this.cutting) return;
        if (this.cutting) material.defines.CUT = "";
        else delete material.defines.CUT;
        material.needsUpdate = true;
    }

    dispose() {
        for (const material of this.all) material.dispose();
    }
}
