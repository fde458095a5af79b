package swashlight.findings.evidence;

import swashlight.findings.cause.SeverityPrior;

/** A severity prior cut into cells: weight, middle and place of each between the nodes at which the machine is solved. */
final class SeverityTable {
    final double[] nodes; // severities, own unit
    final double[] shareFrom; // per cell, 1
    final double[] shareTo; // per cell, 1
    final double[] place; // per cell: position among the nodes, 0 … nodes − 1
    final boolean steps;
    private final SeverityPrior prior;

    SeverityTable(SeverityPrior prior, int nodeCount, int cells) {
        this.prior = prior;
        steps = prior.inSteps();
        double[] ladder = prior.ladder(nodeCount - 1);
        nodes = ladder;
        int count = steps ? ladder.length : cells;
        double[] fine = steps ? ladder : prior.ladder(cells);
        shareFrom = new double[count];
        shareTo = new double[count];
        place = new double[count];
        double below = 0;
        for (int c = 0; c < count; c++) {
            shareFrom[c] = below;
            below = c == count - 1 ? 1 : prior.below(steps ? fine[c] : fine[c + 1]);
            shareTo[c] = below;
            place[c] = steps ? c : (c + 0.5) / cells * (ladder.length - 1);
        }
    }

    /** Severity that half the cases stay below, own unit. */
    double middle() {
        return prior.severity(0.5);
    }

    int cells() {
        return place.length;
    }

    double weight(int cell) {
        return shareTo[cell] - shareFrom[cell];
    }

    /** Severity within a cell, by an even number in 0 … 1; own unit. */
    double severity(int cell, double uniform) {
        return steps ? nodes[cell] : prior.severity(shareFrom[cell] + uniform * (shareTo[cell] - shareFrom[cell]));
    }
}
