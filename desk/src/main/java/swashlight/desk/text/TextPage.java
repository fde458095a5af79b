package swashlight.desk.text;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;

/** A report as text for a terminal or a file: sentences wrapped, facts in two columns, tables, chapters under their headings. */
public final class TextPage {
    private static final int LEAST = 30; // characters for the value of a fact, however long its name

    private final Writing writing;
    private final Ink ink;
    private final int width;

    /** A page in some words, units and ink, so many characters wide. */
    public TextPage(Writing writing, Ink ink, int width) {
        this.writing = writing;
        this.ink = ink;
        this.width = width;
    }

    /** The whole report, ending with a new line. */
    public String of(Report report) {
        List<String> page = new ArrayList<>();
        write(page, report.key(), report.lines(), "");
        return String.join("\n", page) + "\n";
    }

    private void write(List<String> page, String reportKey, List<Line> lines, String indent) {
        int names = nameWidth(reportKey, lines);
        Line before = null;
        for (Line line : lines) {
            if (before != null && (line.getClass() != before.getClass() || line instanceof Chapter)) {
                page.add("");
            }
            if (line instanceof Sentence sentence) {
                boolean answer = page.isEmpty();
                for (String text : wrapped(sentence(reportKey, sentence), indent, width)) {
                    page.add(answer ? ink.strong(text) : text);
                }
            } else if (line instanceof Fact fact) {
                String name = name(reportKey, fact.key());
                String start = indent + name + " ".repeat(Math.max(0, names - name.length()) + 2);
                page.addAll(hanging(start, writing.of(fact.value()), Math.max(LEAST, width - start.length())));
            } else if (line instanceof Table table) {
                new TextTable(writing, ink, reportKey, table, tableWidth(indent))
                        .lines()
                        .forEach(text -> page.add(indent + text));
            } else if (line instanceof Chapter chapter) {
                page.add(indent + ink.strong(name(reportKey, chapter.key())));
                write(page, reportKey, chapter.lines(), indent + "  ");
            }
            before = line;
        }
    }

    /** In files and pipes rows stay whole, for those who search them line by line. */
    private int tableWidth(String indent) {
        return ink == Ink.PLAIN ? Integer.MAX_VALUE : width - indent.length();
    }

    private int nameWidth(String reportKey, List<Line> lines) {
        return lines.stream()
                .filter(Fact.class::isInstance)
                .mapToInt(fact -> name(reportKey, fact.key()).length())
                .max()
                .orElse(0);
    }

    private String name(String reportKey, String key) {
        return writing.words().say(reportKey + "." + key, "name." + key, key);
    }

    private String sentence(String reportKey, Sentence sentence) {
        String words = writing.words().say(reportKey + "." + sentence.key(), sentence.key());
        return Words.fill(words, sentence.values(), writing::of);
    }

    /** Text after a start, its further lines below its first. */
    static List<String> hanging(String start, String text, int room) {
        List<String> lines = new ArrayList<>();
        for (String line : wrapped(text, "", room)) {
            lines.add((lines.isEmpty() ? start : " ".repeat(start.length())) + line);
        }
        return lines;
    }

    /** Text broken at spaces to a width; a new line in the words stays one. */
    private static List<String> wrapped(String text, String indent, int width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            StringBuilder line = new StringBuilder(indent);
            boolean empty = true;
            for (String word : paragraph.split(" ")) {
                if (!empty && line.length() + 1 + word.length() > width) {
                    lines.add(line.toString());
                    line = new StringBuilder(indent);
                    empty = true;
                }
                line.append(empty ? "" : " ").append(word);
                empty = false;
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
