/** As much of uPlot as the page uses. */
export default class uPlot {
    constructor(options: object, data: unknown, host: HTMLElement);
    readonly scales: Record<string, { min?: number | null; max?: number | null }>;
    setData(data: unknown, resetScales?: boolean): void;
    setScale(scale: string, limits: { min: number; max: number }): void;
    setSize(size: { width: number; height: number }): void;
    valToPos(value: number, scale: string, canvasPixels?: boolean): number;
    setCursor(at: { left: number; top: number }): void;
    redraw(): void;
    destroy(): void;
}
