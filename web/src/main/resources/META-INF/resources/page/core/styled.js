/**
 * Styles an element from a template under a policy without inline styles. Lit's own styleMap writes a style attribute when it first renders,
 * which such a policy refuses; this goes through the style object from the first time on:
 *
 *     html`<i ${styled({ width: "40%" })}></i>`
 */
import { ref } from "lit/directives/ref.js";

/** @param {Partial<CSSStyleDeclaration>} styles */
export const styled = (styles) => ref((/** @type {Element | undefined} */ element) => {
    if (element instanceof HTMLElement || element instanceof SVGElement) Object.assign(element.style, styles);
});
