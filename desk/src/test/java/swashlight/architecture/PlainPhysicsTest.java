package swashlight.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static swashlight.architecture.RoomsTest.DRIVE;
import static swashlight.architecture.RoomsTest.FINDINGS;
import static swashlight.architecture.RoomsTest.HOUSE;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What physics and diagnosis leave alone, so that the same input gives the same answer everywhere, the browser included.
 */
final class PlainPhysicsTest {
    /** Wrong or missing in the browser's class library, silently; see docs/decisions and the room's own forms of them. */
    static final Set<String> WRONG_IN_THE_BROWSER = Set.of(
            "fma",
            "log1p",
            "expm1",
            "sinh",
            "cosh",
            "tanh",
            "hypot",
            "rint",
            "round",
            "log10",
            "ulp",
            "IEEEremainder",
            "cbrt",
            "multiplyHigh");

    @Test
    void noThreads() {
        noneMayUse(
                "threads", Thread.class, ThreadLocal.class, Runtime.class, ProcessBuilder.class, java.util.Timer.class);
    }

    @Test
    void noReflection() {
        noneMayCall(
                "reflection",
                Class.class,
                "forName",
                "getMethod",
                "getMethods",
                "getDeclaredMethod",
                "getDeclaredMethods",
                "getDeclaredField",
                "getDeclaredFields",
                "getField",
                "getFields",
                "getConstructor",
                "getDeclaredConstructor",
                "getRecordComponents",
                "newInstance",
                "getResource",
                "getResourceAsStream");
    }

    @Test
    void noClock() {
        noneMayCall("a clock", System.class, "currentTimeMillis", "nanoTime");
        noneMayUse("a calendar", java.util.Date.class, java.util.Calendar.class, java.util.TimeZone.class);
    }

    @Test
    void nothingFromTheMachineItRunsOn() {
        noneMayCall(
                "the machine",
                System.class,
                "getenv",
                "getProperty",
                "getProperties",
                "exit",
                "setProperty",
                "load",
                "loadLibrary",
                "console");
        noClasses()
                .that()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .because("physics answers with values")
                .check(HOUSE);
    }

    @Test
    void noLocaleAndNoFormatting() {
        noneMayCall("formatting", String.class, "format", "formatted");
        noneMayUse(
                "locales",
                java.util.Locale.class,
                java.util.Formatter.class,
                java.util.ResourceBundle.class,
                java.util.Scanner.class);
    }

    @Test
    void noChanceWithoutASeed() {
        noneMayCall("chance without a seed", Math.class, "random");
        noneMayUse("generators the browser lacks", java.util.SplittableRandom.class, java.util.UUID.class);
        noClasses()
                .that()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .should()
                .callConstructor(java.util.Random.class)
                .because("a seed is stated")
                .check(HOUSE);
    }

    @Test
    void noMathThatIsWrongInTheBrowser() {
        DescribedPredicate<JavaCall<?>> wrong = describe(
                "are wrong in the browser: " + WRONG_IN_THE_BROWSER,
                call -> isMath(call.getTarget())
                        && WRONG_IN_THE_BROWSER.contains(call.getTarget().getName()));
        noClasses()
                .that()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .should()
                .callCodeUnitWhere(wrong)
                .because("the room has its own forms, checked on both sides")
                .check(HOUSE);
    }

    @Test
    void noCallThatTheBrowserLacks() {
        noneMayCall("missing in the browser", String.class, "lines");
        DescribedPredicate<JavaCall<?>> parallel = describe(
                "go parallel", call -> Set.of("parallel", "parallelStream").contains(call.getName()));
        noClasses()
                .that()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .should()
                .callCodeUnitWhere(parallel)
                .check(HOUSE);
    }

    @Test
    void noDistinct() {
        DescribedPredicate<JavaCall<?>> distinct =
                describe("drop repeats in a stream", call -> call.getName().equals("distinct"));
        noClasses()
                .that()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .should()
                .callCodeUnitWhere(distinct)
                .because(
                        "after flatMap the browser's class library (TeaVM 0.16) forgets what it has seen; collect a LinkedHashSet")
                .check(HOUSE);
    }

    @Test
    void noStaticThatChanges() {
        fields().that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .and()
                .areStatic()
                .should()
                .beFinal()
                .because("same input, same answer")
                .check(HOUSE);
    }

    @Test
    void noArrayThatEverybodyMayWriteTo() {
        DescribedPredicate<JavaClass> array = describe("an array", JavaClass::isArray);
        noFields()
                .that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .and()
                .areStatic()
                .and()
                .areNotPrivate()
                .and()
                .doNotHaveModifier(JavaModifier.SYNTHETIC) // the compiler's own table of a switch over an enum
                .should()
                .haveRawType(array)
                .because("a static array is a static that changes")
                .check(HOUSE);
    }

    private static boolean isMath(CodeUnitCallTarget target) {
        return target.getOwner().isEquivalentTo(Math.class) || target.getOwner().isEquivalentTo(StrictMath.class);
    }

    private static void noneMayUse(String what, Class<?>... types) {
        DescribedPredicate<JavaClass> named =
                describe(what, type -> Arrays.stream(types).anyMatch(type::isEquivalentTo));
        noClasses()
                .that()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .should()
                .dependOnClassesThat(named)
                .check(HOUSE);
    }

    private static void noneMayCall(String what, Class<?> owner, String... names) {
        Set<String> banned = Set.of(names);
        DescribedPredicate<JavaCall<?>> call = describe(
                "are " + what,
                made -> made.getTarget().getOwner().isEquivalentTo(owner)
                        && banned.contains(made.getTarget().getName()));
        noClasses()
                .that()
                .resideInAnyPackage(DRIVE, FINDINGS)
                .should()
                .callCodeUnitWhere(call)
                .check(HOUSE);
    }
}
