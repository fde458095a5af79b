package swashlight.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static swashlight.architecture.RoomsTest.HOUSE;

import org.junit.jupiter.api.Test;

/** A name says what a thing is; these say nothing. */
final class NamesTest {
    @Test
    void noPackageIsADrawerForAnything() {
        noClasses()
                .should()
                .resideInAnyPackage("..util..", "..utils..", "..common..", "..impl..", "..misc..", "..helper..")
                .because("a package is named by a noun of the trade")
                .check(HOUSE);
    }

    @Test
    void noClassIsNamedByNothing() {
        noClasses()
                .should()
                .haveSimpleNameEndingWith("Manager")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Utils")
                .orShould()
                .haveSimpleNameEndingWith("Impl")
                .because("one idea a file, named by the idea")
                .check(HOUSE);
    }
}
