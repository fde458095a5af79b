package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Line;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.fit.Account;

/** What an answer stands on, one sentence an entry. */
final class AccountLines {
    private AccountLines() {}

    static List<Line> of(Account account) {
        List<Line> lines = new ArrayList<>();
        for (Account.Line line : account.lines()) {
            lines.add(Sentence.of("account." + line.kind().name(), Value.text(line.text())));
        }
        return lines;
    }
}
