package swashlight.server.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page opens for a stranger on every size and in every theme: quietly, whole, and for everybody. */
@WithEyes
final class OpensInBrowser {
    static Stream<Look> looks() {
        return Stream.of(Look.PHONE, Look.PHONE_DARK, Look.SMALL_PHONE, Look.DESK, Look.DESK_DARK, Look.PROJECTOR);
    }

    static Stream<Look> looksAtEverything() {
        return Stream.of(Look.DESK, Look.PHONE_DARK);
    }

    @ParameterizedTest
    @MethodSource("looks")
    void opensWithoutComplaint(Look look, Eyes eyes) {
        try (Visit visit = eyes.visit(look)) {
            visit.page().waitForTimeout(1500); // so that it has moved
            visit.picture("open");
            assertThat(visit.complaints()).as("what the browser complains of").isEmpty();
            assertThat(Axe.violations(visit))
                    .as("rules of WCAG 2.2 AA that are broken")
                    .isEmpty();
            assertThat(visit.number("return document.scrollingElement.scrollWidth"))
                    .as("width of all there is, in a window %s wide (WCAG 2.2, 1.4.10)", look.width())
                    .isLessThanOrEqualTo(look.width());
        }
    }

    /** Every place that can be opened is looked at in turn. */
    @ParameterizedTest
    @MethodSource("looksAtEverything")
    void everyPlaceIsForEverybody(Look look, Eyes eyes) {
        try (Visit visit = eyes.visit(look)) {
            for (String place : places(look)) {
                visit.ask("shell[given[0]] = given[1]; await later(800);", place(look, place));
                visit.picture(place);
                assertThat(Axe.violations(visit))
                        .as(place + ": rules of WCAG 2.2 AA that are broken")
                        .isEmpty();
                assertThat(visit.complaints())
                        .as(place + ": what the browser complains of")
                        .isEmpty();
            }
        }
    }

    /** The looking itself: a picture without words is seen, through the page's shadow roots too. */
    @Test
    void whatIsWrongIsSeen(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            visit.ask(
                    "shell.renderRoot.querySelector('main').append(document.createElement('img')); console.error('told');");
            assertThat(Axe.violations(visit)).hasSize(1).first().asString().startsWith("image-alt");
            assertThat(visit.complaints()).hasSize(1);
        }
    }

    private static List<String> places(Look look) {
        Stream<String> asked = Stream.of("hand", "faults", "drive", "opening");
        Stream<String> shown = Stream.of("circuit", "curves", "balance", "tones", "telling", "stories");
        Stream<String> part = look.phone() ? Stream.of("part") : Stream.of();
        return Stream.of(asked, part, shown).flatMap(some -> some).toList();
    }

    /** Which of the page's two sides a place is on, and its key. */
    private static List<String> place(Look look, String place) {
        boolean asked =
                !look.phone() && List.of("hand", "faults", "drive", "opening").contains(place);
        return List.of(asked ? "asked" : "shown", place);
    }
}
