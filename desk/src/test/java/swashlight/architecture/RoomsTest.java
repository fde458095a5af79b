package swashlight.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * The house: which room may look into which. Ground floor first: drive, findings, files, desk, server; an import only points down.
 * The room {@code browser} has a test of its own, so that it need not be built for these.
 */
final class RoomsTest {
    static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("swashlight");

    static final String DRIVE = "swashlight.drive..";
    static final String FINDINGS = "swashlight.findings..";
    static final String FILES = "swashlight.files..";
    static final String BROWSER = "swashlight.browser..";
    static final String DESK = "swashlight.desk..";
    static final String WORK = "swashlight.desk.work..";
    static final String LINE = "swashlight.desk.line..";
    static final String SERVE = "swashlight.server..";

    /** What of the JDK the browser's class library has too, and physics needs; packages without their subpackages. */
    static final String[] PLAIN_JAVA = {
        "java.lang", "java.lang.invoke", "java.lang.runtime", "java.util", "java.util.function", "java.util.stream"
    };

    @Test
    void driveStandsOnPlainJavaAlone() {
        classes()
                .that()
                .resideInAPackage(DRIVE)
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(with(PLAIN_JAVA, DRIVE))
                .because("the same physics runs in the browser")
                .check(HOUSE);
    }

    @Test
    void findingsStandOnDrive() {
        classes()
                .that()
                .resideInAPackage(FINDINGS)
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(with(PLAIN_JAVA, DRIVE, FINDINGS))
                .because("the same diagnosis runs in the browser")
                .allowEmptyShould(notYetBuilt(FINDINGS))
                .check(HOUSE);
    }

    @Test
    void filesStandOnDriveAndFindings() {
        noClasses()
                .that()
                .resideInAPackage(FILES)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(DESK)
                .because("a cluster or a benchmark reads a drive without the desk")
                .allowEmptyShould(notYetBuilt(FILES))
                .check(HOUSE);
    }

    @Test
    void nobodyLooksIntoTheBrowserRoom() {
        noClasses()
                .that()
                .resideOutsideOfPackage(BROWSER)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(BROWSER)
                .because("it is a face for pages; on the JVM the rooms behind it are at hand")
                .check(HOUSE);
    }

    @Test
    void onlyFilesAndDeskKnowJson() {
        noClasses()
                .that()
                .resideOutsideOfPackages(FILES, DESK)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tools.jackson..", "com.fasterxml..", "com.networknt..", "org.apache.commons.csv..")
                .because("a value of the trade carries no annotations of a file format")
                .check(HOUSE);
    }

    @Test
    void workKnowsNeitherOfItsDoors() {
        noClasses()
                .that()
                .resideInAPackage(WORK)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(LINE, SERVE, "picocli..")
                .because("the work is done once and offered twice")
                .allowEmptyShould(notYetBuilt(WORK))
                .check(HOUSE);
    }

    @Test
    void nobodyHereSeesTheServer() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(SERVE, "io.quarkus..", "io.vertx..", "jakarta..")
                .because("a command asks for a door; only the room above knows which server opens it")
                .check(HOUSE);
    }

    @Test
    void noCyclesBetweenRooms() {
        slices().matching("swashlight.(*)..").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void noCyclesBetweenThePackagesOfARoom() {
        slices().matching("swashlight.(*).(*)..").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void noCyclesBetweenPackagesAtTheFinest() {
        slices().matching("swashlight.(**)").should().beFreeOfCycles().check(HOUSE);
    }

    /** A rule may find nothing to look at only as long as its room has no sources; "swashlight.desk.work.." is in desk. */
    private static boolean notYetBuilt(String room) {
        String path = room.replace("..", "").replace('.', '/');
        return Files.notExists(Path.of("..", path.split("/")[1], "src", "main", "java", path));
    }

    static String[] with(String[] some, String... more) {
        String[] all = Arrays.copyOf(some, some.length + more.length);
        System.arraycopy(more, 0, all, some.length, more.length);
        return all;
    }
}
