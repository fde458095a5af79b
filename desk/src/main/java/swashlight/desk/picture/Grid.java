package swashlight.desk.picture;

import java.util.ArrayList;
import java.util.List;

/** Values at the crossings of two rows of numbers, cut into triangles over which they are taken as flat. */
record Grid(double[] xs, double[] ys, double[][] values) {
    /** One corner: place and value. */
    record Corner(double x, double y, double value) {
        /** The place between this corner and another where the value is a level. */
        Corner towards(Corner other, double level) {
            double share = (level - value) / (other.value - value);
            return new Corner(x + share * (other.x - x), y + share * (other.y - y), level);
        }
    }

    double least() {
        double least = Double.POSITIVE_INFINITY;
        for (double[] row : values) {
            for (double value : row) {
                least = value < least ? value : least;
            }
        }
        return least;
    }

    double greatest() {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double[] row : values) {
            for (double value : row) {
                greatest = value > greatest ? value : greatest;
            }
        }
        return greatest;
    }

    /** Whether the values change more from the lower left to the upper right corner than along the other diagonal. */
    boolean changesMostUpwards() {
        int top = ys.length - 1;
        int right = xs.length - 1;
        double rising = Math.abs(values[top][right] - values[0][0]);
        double falling = Math.abs(values[top][0] - values[0][right]);
        return !(falling > rising);
    }

    /** All triangles whose corners have values: four a cell, around its middle. */
    List<List<Corner>> triangles() {
        List<List<Corner>> triangles = new ArrayList<>();
        for (int row = 0; row + 1 < ys.length; row++) {
            for (int column = 0; column + 1 < xs.length; column++) {
                List<Corner> around = List.of(
                        corner(row, column),
                        corner(row, column + 1),
                        corner(row + 1, column + 1),
                        corner(row + 1, column));
                double sum = 0;
                for (Corner corner : around) {
                    sum += corner.value();
                }
                if (Double.isNaN(sum)) {
                    continue;
                }
                Corner middle =
                        new Corner((xs[column] + xs[column + 1]) / 2, (ys[row] + ys[row + 1]) / 2, sum / around.size());
                for (int i = 0; i < around.size(); i++) {
                    triangles.add(List.of(middle, around.get(i), around.get((i + 1) % around.size())));
                }
            }
        }
        return triangles;
    }

    private Corner corner(int row, int column) {
        return new Corner(xs[column], ys[row], values[row][column]);
    }

    /** The part of a triangle at or above a level; corners made by the cut lie on the level. */
    static List<Corner> above(List<Corner> triangle, double level) {
        List<Corner> part = new ArrayList<>();
        for (int i = 0; i < triangle.size(); i++) {
            Corner here = triangle.get(i);
            Corner next = triangle.get((i + 1) % triangle.size());
            if (here.value() >= level) {
                part.add(here);
            }
            if (here.value() >= level != next.value() >= level) {
                part.add(here.towards(next, level));
            }
        }
        return part;
    }

    /** The piece of the contour line through a triangle: two places, or none. */
    static List<Corner> line(List<Corner> triangle, double level) {
        List<Corner> ends = new ArrayList<>();
        for (int i = 0; i < triangle.size(); i++) {
            Corner here = triangle.get(i);
            Corner next = triangle.get((i + 1) % triangle.size());
            if (here.value() >= level != next.value() >= level) {
                ends.add(here.towards(next, level));
            }
        }
        return ends;
    }
}
