package swashlight.findings.losses;

import java.util.List;

/**
 * How well one set of losses explains a table.
 *
 * @param terms names of the losses in it
 * @param deviation what it leaves, standard deviation, SI unit of its dimension
 * @param criterion Akaike's, corrected for few rows, 1; smaller is better
 * @param weight share of belief among all sets, 1
 * @param unseen root mean square error at speeds (else pressures) left out of the fit, SI unit of its dimension
 */
public record TermSet(List<String> terms, double deviation, double criterion, double weight, double unseen) {
    /** Keeps its own copy of the names. */
    public TermSet {
        terms = List.copyOf(terms);
    }
}
