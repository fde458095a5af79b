package swashlight.desk.line;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import swashlight.desk.picture.Picture;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Report;
import swashlight.desk.text.CsvPage;
import swashlight.desk.text.Ink;
import swashlight.desk.text.JsonPage;
import swashlight.desk.text.TextPage;
import swashlight.desk.text.Words;
import swashlight.desk.text.Writing;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Paper;
import swashlight.desk.work.Refusal;

/** Tells an outcome in the wished form: answers to standard output or a file, complaints to standard error. */
final class Teller {
    private final Session session;
    private final Wish wish;
    private final Writing writing;
    private final List<Refusal> refusals = new ArrayList<>();

    Teller(Session session, Wish wish) {
        this.session = session;
        this.wish = wish;
        this.writing = new Writing(Words.in(Locale.getDefault()), wish.units());
    }

    Ending tell(Outcome outcome) {
        if (outcome instanceof Outcome.Answered answered) {
            write(answered.report());
            draw(answered.figures());
        } else if (outcome instanceof Outcome.Printed printed) {
            write(printed.text());
        } else if (outcome instanceof Outcome.NotConverged lost) {
            write(lost.report());
        } else if (outcome instanceof Outcome.Refused refused) {
            refusals.addAll(refused.refusals());
        }
        Complaints.tell(session.err(), refusals);
        return refusals.isEmpty() ? Ending.of(outcome) : Ending.INPUT;
    }

    private void write(Report report) {
        write(page(report));
    }

    private void write(String page) {
        if (wish.out().isPresent()) {
            save(wish.out().get(), page.getBytes(StandardCharsets.UTF_8));
        } else {
            session.out().print(page);
            session.out().flush();
        }
    }

    private String page(Report report) {
        return switch (wish.form()) {
            case JSON -> JsonPage.of(report, writing);
            case CSV -> report.table().map(new CsvPage(writing)::of).orElse("");
            case TEXT ->
                wish.out().isPresent()
                        ? new TextPage(writing, Ink.PLAIN, LineWidth.IN_FILES).of(report)
                        : new TextPage(writing, session.ink(), session.width()).of(report);
        };
    }

    private void draw(List<Figure> figures) {
        if (figures.isEmpty() || (wish.svg().isEmpty() && wish.png().isEmpty())) {
            return;
        }
        Picture picture = Picture.of(figures, writing);
        wish.svg().ifPresent(file -> save(file, picture.svg().getBytes(StandardCharsets.UTF_8)));
        wish.png().ifPresent(file -> save(file, picture.png()));
    }

    private void save(Path file, byte[] bytes) {
        refusals.addAll(Paper.write(file, bytes));
    }
}
