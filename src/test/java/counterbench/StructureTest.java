package counterbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import counterbench.structure.HouseRules;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Who may know whom: the house keeps every rule, and every rule sees what breaks it. */
class StructureTest {
    private static final String BAD = "counterbench.structure.bad";
    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("counterbench");
    private static final JavaClasses BAD_EXAMPLES = new ClassFileImporter().importPackages(BAD);

    /** The rules, each with the bad examples that it must see. */
    enum Held {
        ROOMS(HouseRules::roomsForAll, "Homeless"),
        ARROWS(HouseRules::arrowsPointDown, "KnowsWhatStandsOnIt", "KnowsItsNeighbour"),
        SQL(HouseRules::sqlOnlyInStores, "AsksTheStore"),
        WORKBOOKS(HouseRules::workbooksOnlyInPoi, "WritesWorkbook"),
        PAGES(HouseRules::pagesOnlyInPdf, "DrawsASymbol"),
        SPRING(HouseRules::springOnlyAtTheTop, "KnowsSpring"),
        TERMINALS(HouseRules::terminalsOnlyInTheShell, "AsksATerminal"),
        FILES(HouseRules::noFilesInTheCore, "ReadsAFile"),
        CLOCK(HouseRules::noClockBelowTheShell, "ReadsTheClock"),
        NUMBERS(HouseRules::exactNumbers, "HalfAWasher"),
        PRINTING(HouseRules::printOnlyAtTheEntrance, "Prints");

        private final Function<HouseRules, ArchRule> rule;
        private final List<String> badExamples;

        Held(Function<HouseRules, ArchRule> rule, String... badExamples) {
            this.rule = rule;
            this.badExamples = List.of(badExamples);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_house_keeps_every_rule(Held held) {
        held.rule.apply(new HouseRules("counterbench")).check(HOUSE);
    }

    @ParameterizedTest
    @EnumSource
    void every_rule_sees_its_bad_examples_and_nothing_else(Held held) {
        ArchRule rule = held.rule.apply(new HouseRules(BAD));
        List<String> broken = rule.evaluate(BAD_EXAMPLES).getFailureReport().getDetails();
        assertThat(held.badExamples).allMatch(bad -> names(broken, bad));
        assertThat(broken).allMatch(text -> held.badExamples.stream().anyMatch(text::contains));
    }

    private static boolean names(List<String> broken, String bad) {
        return broken.stream().anyMatch(text -> text.contains(bad));
    }
}
