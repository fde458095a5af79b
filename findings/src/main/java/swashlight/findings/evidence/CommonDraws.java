package swashlight.findings.evidence;

import java.util.Arrays;
import java.util.Random;

/**
 * The random numbers that all causes share, so that chance moves them together and their differences stay sharp. Made once from a seed,
 * grown when more are wanted.
 */
public final class CommonDraws {
    /** Which of the even numbers of a draw serves what; 1 is free, so that seeds keep their answers. */
    static final int STRATUM = 0;

    static final int FIRST = 2;
    static final int SECOND = 3;
    static final int WILD = 4;
    private static final int UNIFORMS = 5;
    private static final long STRIDE = 0x9E3779B97F4A7C15L; // keeps the streams of neighbouring seeds apart

    private final int batches;
    private final int width;
    private final Random[] streams;
    private final double[][] uniforms; // per batch: UNIFORMS numbers a draw
    private final double[][] normals; // per batch: width numbers a draw
    private int drawn;

    /** Streams from a seed for so many batches, with so many normal numbers a draw. */
    public CommonDraws(long seed, int batches, int width) {
        this.batches = batches;
        this.width = width;
        this.streams = new Random[batches];
        this.uniforms = new double[batches][0];
        this.normals = new double[batches][0];
        for (int batch = 0; batch < batches; batch++) {
            streams[batch] = new Random(seed * 1_000_003L + batch * STRIDE);
        }
    }

    int batches() {
        return batches;
    }

    /** Makes sure that every batch holds so many draws. */
    void reach(int draws) {
        if (draws <= drawn) {
            return;
        }
        for (int batch = 0; batch < batches; batch++) {
            uniforms[batch] = Arrays.copyOf(uniforms[batch], UNIFORMS * draws);
            normals[batch] = Arrays.copyOf(normals[batch], width * draws);
            for (int draw = drawn; draw < draws; draw++) {
                for (int i = 0; i < UNIFORMS; i++) {
                    uniforms[batch][UNIFORMS * draw + i] = streams[batch].nextDouble();
                }
                for (int i = 0; i < width; i++) {
                    normals[batch][width * draw + i] = streams[batch].nextGaussian();
                }
            }
        }
        drawn = draws;
    }

    /** Number even in 0 … 1; each draw has five. */
    double uniform(int batch, int draw, int which) {
        return uniforms[batch][UNIFORMS * draw + which];
    }

    /** Standard normal number. */
    double normal(int batch, int draw, int which) {
        return normals[batch][width * draw + which];
    }
}
