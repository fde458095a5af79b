package swashlight.browser;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which functions of Math and StrictMath the rooms that run in a browser use, read from their byte code. */
final class FunctionsUsed {
    private FunctionsUsed() {}

    /** All classes that are compiled for a browser. */
    static JavaClasses rooms() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .withImportOption(location -> !location.contains("-tests.jar"))
                .importPackages("swashlight.drive", "swashlight.findings", "swashlight.browser");
    }

    static Set<String> names() {
        return rooms().stream()
                .flatMap(FunctionsUsed::targets)
                .filter(target -> target.getOwner().isEquivalentTo(Math.class)
                        || target.getOwner().isEquivalentTo(StrictMath.class))
                .map(FunctionsUsed::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<CodeUnitAccessTarget> targets(JavaClass type) {
        return Stream.concat(type.getCodeUnitCallsFromSelf().stream(), type.getCodeUnitReferencesFromSelf().stream())
                .map(access -> access.getTarget());
    }

    private static String name(CodeUnitAccessTarget target) {
        return target.getName()
                + target.getRawParameterTypes().stream()
                        .map(JavaClass::getName)
                        .collect(Collectors.joining(", ", "(", ")"));
    }
}
