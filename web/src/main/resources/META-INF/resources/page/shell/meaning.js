/** What a parameter is called, in the page's language. */
import { t, tOr } from "../core/words.js";

/** @param {string} key @param {string} meaning the physics' own, in English */
export const meaningOf = (key, meaning) => {
    const where = key.split(".")[0];
    const plain = tOr(`parameter.${key}`, tOr(`parameter.${key.replace(/^(pump|motor)\./, "unit.")}`, meaning));
    return where === "pump" || where === "motor" ? `${t(`unit.${where}`)}: ${plain}` : plain;
};
