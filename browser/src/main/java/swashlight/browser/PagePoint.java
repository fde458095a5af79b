package swashlight.browser;

import java.util.Arrays;
import org.teavm.jso.JSExport;
import swashlight.drive.steady.LedgerItem;
import swashlight.drive.steady.SteadyAnswer;

/** A settled state, or the best that was found. */
public final class PagePoint {
    private static final int LEDGER_COLUMNS = 4;

    private final SteadyAnswer answer;

    PagePoint(SteadyAnswer answer) {
        this.answer = answer;
    }

    /** True when every balance is met. */
    @JSExport
    public boolean converged() {
        return answer instanceof SteadyAnswer.Converged;
    }

    /** Worst balance over its magnitudes, 1. */
    @JSExport
    public double residual() {
        return answer.residual();
    }

    /** What to try when it did not converge; else empty. */
    @JSExport
    public String advice() {
        return answer instanceof SteadyAnswer.NotConverged failed ? failed.advice() : "";
    }

    /** Its quantities in the order of {@link Physics#pointQuantities()}, SI. */
    @JSExport
    public double[] values() {
        return Arrays.stream(PointQuantity.values())
                .mapToDouble(quantity -> quantity.of(answer.point()))
                .toArray();
    }

    /** Four numbers an item, in the order of {@link Physics#ledgerItems()}: flow into A, into B, into the gallery (m³/s), power taken (W). */
    @JSExport
    public double[] ledger() {
        LedgerItem[] items = LedgerItem.values();
        double[] ledger = new double[LEDGER_COLUMNS * items.length];
        int at = 0;
        for (LedgerItem item : items) {
            ledger[at++] = answer.point().intoA(item);
            ledger[at++] = answer.point().intoB(item);
            ledger[at++] = answer.point().intoGallery(item);
            ledger[at++] = answer.point().power(item);
        }
        return ledger;
    }

    /** Keys of what is remarkable. */
    @JSExport
    public String[] events() {
        return Key.all(answer.point().events());
    }
}
