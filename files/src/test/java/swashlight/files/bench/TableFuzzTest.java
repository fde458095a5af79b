package swashlight.files.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.Random;
import org.junit.jupiter.api.Test;
import swashlight.drive.oil.Oil;
import swashlight.files.document.InputFault;
import swashlight.findings.losses.BenchRun;

/** Whatever stands in a table, it is read or complained of; nothing else may happen. */
final class TableFuzzTest {
    private static final long SEED = 180;
    private static final int INPUTS = 20_000;
    private static final String BENCH = "speed [rpm],pressure [bar],flow [L/min],torque [N.m],temperature [°C]\n"
            + "1500,100,30,60,50\n2000,200,41,110,60\n";
    private static final String RIG = "cycle,step,PS1_bar,FS1_L_min,EPS1_W,TS1_degC,pump_leak_class,valve_pct,"
            + "accumulator_bar,unstable_flag\n1,p,150,7.9,2400,36,0,100,90,0\n";
    private static final String DRAIN = "state,time,p_leak_bar,T_leak_C,p_out_bar,T_out_C,q_leak_L_min,q_out_L_min\n"
            + "healthy,2023-12-21T11:39:36,0.1,43,40,26,0.01,65\nhealthy_stopped,2023-12-21T11:39:38,0.1,43,0,26,0,0\n";
    private static final String SCRAPS = ",,\n\"\"'-+e.0123456789NaN∞[]# \t\r;xX\u0000";

    @Test
    void everyInputIsReadOrComplainedOf() {
        Random random = new Random(SEED);
        int read = 0;
        int refused = 0;
        for (int i = 0; i < INPUTS; i++) {
            int which = i % 3;
            String text = spoilt(which == 0 ? BENCH : which == 1 ? RIG : DRAIN, random);
            try {
                if (which == 0) {
                    BenchTableFile.read(
                            "f.csv", new StringReader(text), BenchRun.Kind.PUMP, Oil.mineral(46e-6, 6.8e-6));
                } else if (which == 1) {
                    PlateausFile.read("f.csv", new StringReader(text));
                } else {
                    DrainPointsFile.read("f.csv", new StringReader(text));
                }
                read++;
            } catch (InputFault fault) {
                refused++;
                assertThat(fault.complaints()).isNotEmpty();
            } catch (RuntimeException ours) {
                throw new AssertionError("seed " + SEED + ", input " + i + ":\n" + text, ours);
            }
        }
        assertThat(read).isGreaterThan(500);
        assertThat(refused).isGreaterThan(5000);
    }

    private static String spoilt(String text, Random random) {
        StringBuilder spoilt = new StringBuilder(text);
        int changes = 1 + random.nextInt(4);
        for (int k = 0; k < changes && spoilt.length() > 0; k++) {
            int place = random.nextInt(spoilt.length());
            char scrap = SCRAPS.charAt(random.nextInt(SCRAPS.length()));
            switch (random.nextInt(3)) {
                case 0 -> spoilt.setCharAt(place, scrap);
                case 1 -> spoilt.insert(place, scrap);
                default -> spoilt.delete(place, Math.min(spoilt.length(), place + 1 + random.nextInt(6)));
            }
        }
        return spoilt.toString();
    }
}
