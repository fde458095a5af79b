package swashlight.desk.report;

import java.util.List;

/**
 * Rows under columns.
 *
 * @param key its stable name
 * @param columns with the measure of their numbers
 * @param rows one value a column
 */
public record Table(String key, List<Column> columns, List<List<Value>> rows) implements Line {
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Value> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "table " + key + ": a row has " + row.size() + " values for " + columns.size() + " columns");
            }
        }
    }
}
