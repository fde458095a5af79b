/** Which drive it is, and every number that describes it: change one and the drive, the picture and the answers change. */
import { LitElement, css, html, nothing } from "lit";
import { fits, following } from "../core/block.js";
import { store } from "../core/store.js";
import { show } from "../core/units.js";
import { t, tOr } from "../core/words.js";
import { dialOf } from "./dial.js";
import { dialStyle } from "./dial-style.js";
import { meaningOf } from "./meaning.js";
import { controls } from "./styles.js";
import { watchGaze } from "./watching.js";

/** Those that trainers reach for first stand on top. */
const FIRST = ["pump.pistonCount", "pump.pistonDiameter", "pump.pitchRadius", "pump.fullSwashAngle", "motor.pistonCount", "motor.pistonDiameter",
    "motor.fullSwashAngle", "gears.ratio", "wheels.rollingRadius", "machine.mass", "engine.noLoadSpeed", "belt.speedRatio"];
const WHOLE = /pistonCount$|idlePistons$|keyed$|connected$|Locked$/;

export class SwashDrive extends LitElement {
    static properties = { atlas: { attribute: false }, drives: { attribute: false }, sought: { state: true } };
    static styles = [controls, dialStyle, css`
        input[type="search"], select { width: 100%; }
        .changed { border-left: 4px solid var(--accent); padding-left: 0.5em; }
    `];

    constructor() {
        super();
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        /** @type {readonly import("../types.js").DemoDrive[]} */
        this.drives = [];
        this.sought = "";
        store.addEventListener("bench", () => this.requestUpdate());
        watchGaze(this, ["units"]);
    }

    render() {
        if (!this.atlas) return nothing;
        const drive = this.drives.find((each) => each.key === store.bench.drive);
        const sought = this.sought.trim().toLocaleLowerCase();
        const { keys, meanings } = this.atlas.parameters;
        const found = sought === ""
            ? [...FIRST, ...Object.keys(store.bench.changes).filter((key) => !FIRST.includes(key))]
            : keys.filter((key, at) => `${key} ${meaningOf(key, meanings[at])}`.toLocaleLowerCase().includes(sought));
        return html`
            <h2 class="unseen">${t("place.drive")}</h2>
            <label>${t("drive.which")}
                <select .value=${store.bench.drive} @change=${(/** @type {Event} */ event) => this.choose(/** @type {HTMLSelectElement} */ (event.target).value)}>
                    ${this.drives.map((each) => html`<option value=${each.key} ?selected=${each.key === store.bench.drive}>${tOr(`drive.${each.key}`, each.name)}</option>`)}
                </select></label>
            <p class="soft">${tOr(`drive.${drive?.key}.about`, drive?.about ?? "")} ${t("drive.invented")}</p>
            <div class="row"><button ?disabled=${Object.keys(store.bench.changes).length === 0} @click=${() => store.setBench({ changes: {} }, t("drive.asBuilt"))}>
                ${t("drive.asBuilt")}</button></div>
            <h3>${t("drive.numbers")}</h3>
            <input type="search" aria-label=${t("drive.seek")} placeholder=${t("drive.seek")} .value=${this.sought}
                @input=${(/** @type {Event} */ event) => { this.sought = /** @type {HTMLInputElement} */ (event.target).value; }} />
            ${sought !== "" && found.length === 0 ? html`<p class="soft">${t("drive.none")}</p>` : nothing}
            ${found.slice(0, 40).map((key) => this.number(key))}`;
    }

    /** @param {string} key */
    number(key) {
        const { parameters } = /** @type {import("../types.js").Atlas} */ (this.atlas);
        const at = parameters.keys.indexOf(key);
        const built = this.drives.find((each) => each.key === store.bench.drive)?.values[at];
        if (at < 0 || built === undefined) return nothing;
        const value = store.bench.changes[key] ?? built;
        const unit = parameters.units[at] === "m" && Math.abs(built) < 1e-3 && built !== 0 ? "m worn" : parameters.units[at];
        const [least, most] = span(built, parameters.lows[at], parameters.highs[at]);
        return html`<div class=${key in store.bench.changes ? "changed" : ""}>${dialOf({
            id: `number-${key}`, words: meaningOf(key, parameters.meanings[at]), value, least, most, unit, whole: WHOLE.test(key),
            system: store.gaze.units, note: key in store.bench.changes ? t("drive.built", show(built, unit, store.gaze.units).text) : undefined,
            turned: (now) => store.setBench({ changes: { ...store.bench.changes, ...following(key, now, this.now) } }, meaningOf(key, parameters.meanings[at])),
            check: (now) => this.wrongWith(key, now),
        })}</div>`;
    }

    /** Present value of a parameter, without faults. @param {string} key */
    now = (key) => {
        const built = this.drives.find((each) => each.key === store.bench.drive)?.values[this.atlas?.parameters.keys.indexOf(key) ?? -1];
        return store.bench.changes[key] ?? built ?? NaN;
    };

    /** What the physics does not refuse and nobody can build. @param {string} key @param {number} value */
    wrongWith(key, value) {
        const unit = key.split(".")[0];
        if (unit !== "pump" && unit !== "motor") return "";
        const changed = following(key, value, this.now);
        const [pistons, diameter, radius] = ["pistonCount", "pistonDiameter", "pitchRadius"].map((name) => changed[`${unit}.${name}`] ?? this.now(`${unit}.${name}`));
        return fits(pistons, diameter, radius) ? "" : t("drive.touch", pistons, show(diameter, "m", store.gaze.units).text, show(radius, "m", store.gaze.units).text);
    }

    /** @param {string} key */
    choose(key) {
        store.setBench({ drive: key, changes: {}, faults: {} }, t("drive.which"));
    }
}

/**
 * The slider spans what is sensible around the built value, inside what the physics allows.
 * @param {number} built @param {number} low @param {number} high
 */
function span(built, low, high) {
    const wide = built === 0 ? [low, Math.min(high, Math.max(low, 1))] : [Math.min(built / 4, built * 4), Math.max(built / 4, built * 4)];
    return [Math.max(low, wide[0]), Math.min(high, wide[1])];
}

customElements.define("swash-drive", SwashDrive);
