package counterbench;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.rules.ClaimRules;
import counterbench.claims.rules.CreditRules;
import counterbench.cores.rules.CoreRules;
import counterbench.cores.rules.JobCoresRules;
import counterbench.cores.rules.ShipmentRules;
import counterbench.db.Migrations;
import counterbench.job.rules.JobRules;
import counterbench.job.rules.VehicleRules;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.procedure.rules.ProcedureRules;
import counterbench.stock.rules.StockRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nothing that one place names is missing in another that must have it. */
class CompletenessTest {
    private static final List<Judge<?>> JUDGES =
            Stream.<List<? extends Judge<?>>>of(
                            JobRules.ALL,
                            JobRules.OPEN,
                            VehicleRules.ALL,
                            ProcedureRules.ALL,
                            CoreRules.ALL,
                            JobCoresRules.ALL,
                            ShipmentRules.ALL,
                            ClaimRules.ALL,
                            CreditRules.ALL,
                            StockRules.ALL)
                    .<Judge<?>>flatMap(List::stream)
                    .toList();

    /** One rule reads rows of jobs and rows of the store: each kind of row has its judge. */
    private static final Set<Rule> JUDGED_TWICE = EnumSet.of(Rule.KIT_UNKNOWN);

    @Test
    void every_rule_has_its_judge() {
        assertThat(JUDGES).extracting(Judge::rule).contains(Rule.values());
    }

    @Test
    void no_rule_is_judged_twice_but_those_that_read_two_kinds_of_rows() {
        assertThat(JUDGES)
                .extracting(Judge::rule)
                .filteredOn(rule -> !JUDGED_TWICE.contains(rule))
                .doesNotHaveDuplicates();
        assertThat(JUDGES).extracting(Object::getClass).doesNotHaveDuplicates();
    }

    @Test
    void the_version_that_the_program_expects_is_that_of_the_newest_migration() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("schema"))) {
            List<String> names = files.map(f -> String.valueOf(f.getFileName())).sorted().toList();
            assertThat(names).allMatch(name -> name.matches("V\\d{3}__[a-z_]+\\.sql"));
            assertThat(names)
                    .extracting(name -> name.substring(1, 4))
                    .doesNotHaveDuplicates()
                    .last()
                    .isEqualTo(Migrations.LATEST);
        }
    }
}
