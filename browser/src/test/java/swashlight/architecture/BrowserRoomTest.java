package swashlight.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Where the room stands in the house. It is not on the class path of the other architecture tests, in {@code desk}. */
final class BrowserRoomTest {
    private static final JavaClasses ROOM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("swashlight.browser");

    @Test
    void browserStandsOnDriveAndFindingsAlone() {
        classes()
                .that()
                .resideInAPackage("swashlight.browser")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "java.lang",
                        "java.lang.invoke",
                        "java.lang.runtime",
                        "java.util",
                        "java.util.function",
                        "java.util.stream",
                        "org.teavm.jso",
                        "swashlight.drive..",
                        "swashlight.findings..",
                        "swashlight.browser")
                .because("it is the face of physics and diagnosis and is compiled for the browser with them")
                .check(ROOM);
    }

    @Test
    void whatTheCompilerIsToldKnowsTheCompilerAlone() {
        classes()
                .that()
                .resideInAPackage("swashlight.browser.compiler..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java..", "org.teavm..", "swashlight.browser.compiler..")
                .because("nothing of it runs in a page")
                .check(ROOM);
    }
}
