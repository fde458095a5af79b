package swashlight.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Where the room stands in the house. It is not on the class path of the other architecture tests, in {@code desk}. */
final class ServerRoomTest {
    private static final JavaClasses ROOM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("swashlight.server");

    @Test
    void onlyTheStartKnowsTheCommandLine() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("swashlight.server.Start")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("swashlight.desk.line..")
                .because("the work is done once and offered twice; the doors do not know one another")
                .check(ROOM);
    }

    @Test
    void theStartLoadsNoServer() {
        classes()
                .that()
                .haveFullyQualifiedName("swashlight.server.Start")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java.lang..", "swashlight.desk.line..", "io.quarkus.runtime.annotations..")
                .because("only the command serve starts a web server, and help must stay quick")
                .check(ROOM);
    }

    @Test
    void nothingIsComputedHere() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "swashlight.drive.steady..",
                        "swashlight.drive.motion..",
                        "swashlight.findings..",
                        "swashlight.browser..")
                .because("physics runs where somebody looks at it, so that thirty phones cost the server nothing")
                .check(ROOM);
    }
}
