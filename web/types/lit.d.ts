/** As much of Lit as the page uses; its own types are for a bundler. */
export class LitElement extends HTMLElement {
    static properties: Record<string, object>;
    static styles: unknown;
    readonly renderRoot: ShadowRoot | HTMLElement;
    readonly updateComplete: Promise<boolean>;
    hasUpdated: boolean;
    requestUpdate(name?: string, old?: unknown): void;
    protected render(): unknown;
    protected updated(changed: Map<string, unknown>): void;
    protected firstUpdated(changed: Map<string, unknown>): void;
    protected willUpdate(changed: Map<string, unknown>): void;
    protected shouldUpdate(changed: Map<string, unknown>): boolean;
    protected createRenderRoot(): HTMLElement | ShadowRoot;
    connectedCallback(): void;
    disconnectedCallback(): void;
}
export function html(strings: TemplateStringsArray, ...values: unknown[]): unknown;
export function svg(strings: TemplateStringsArray, ...values: unknown[]): unknown;
export function css(strings: TemplateStringsArray, ...values: unknown[]): unknown;
export const nothing: unique symbol;
export function render(value: unknown, container: HTMLElement | DocumentFragment): unknown;
export function unsafeCSS(value: string): unknown;
export function styleMap(styles: Record<string, string | number | undefined>): unknown;
export function classMap(classes: Record<string, boolean>): unknown;
export function repeat<T>(items: Iterable<T>, key: (item: T) => unknown, template: (item: T, index: number) => unknown): unknown;
export function ref(value: unknown): unknown;
export function live(value: unknown): unknown;
export function ifDefined(value: unknown): unknown;
