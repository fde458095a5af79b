package swashlight.desk.work;

import java.util.List;
import swashlight.findings.study.StudyRow;

/**
 * Rows of one study among several that are added up.
 *
 * @param name of the drive, and whatever else the study's file says
 * @param rows of its machines
 */
record StudyPart(String name, List<StudyRow> rows) {
    StudyPart {
        rows = List.copyOf(rows);
    }
}
