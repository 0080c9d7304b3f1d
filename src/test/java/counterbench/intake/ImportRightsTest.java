package counterbench.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.FactKind;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImportRightsTest {
    private static final List<FactKind> SHEETS =
            Arrays.stream(FactKind.values()).filter(FactKind::isInSheets).toList();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PARTS|parts orders kits shipments receipts issues cores moves acknowledgements"
                        + " counts",
                "TECHNICIAN|instruments calibrations jobs issues uses marks cores",
                "WARRANTY|rates vehicles jobs contacts claims credits",
            })
    void each_role_imports_the_paper_of_its_own_work(Role role, String kinds) {
        Person person = new Person("Hal", Set.of(role));
        assertThat(SHEETS)
                .filteredOn(kind -> ImportRights.problems(person, List.of(kind)).isEmpty())
                .extracting(FactKind::word)
                .containsExactlyInAnyOrder(kinds.split(" "));
    }

    @Test
    void the_lead_imports_all_and_alone_imports_people() {
        assertThat(ImportRights.problems(new Person("Maren", Set.of(Role.LEAD)), SHEETS)).isEmpty();
        Person nobodysLead = new Person("Ines", Set.of(Role.PARTS, Role.TECHNICIAN, Role.WARRANTY));
        assertThat(ImportRights.problems(nobodysLead, SHEETS))
                .extracting(Problem::asked)
                .containsExactly("import of people");
    }

    @Test
    void a_refusal_names_each_kind_once_with_the_roles_that_may() {
        Person hal = new Person("Hal", Set.of(Role.PARTS));
        assertThat(
                        ImportRights.problems(
                                hal,
                                List.of(
                                        FactKind.KITS,
                                        FactKind.JOBS,
                                        FactKind.CLAIMS,
                                        FactKind.CLAIMS)))
                .extracting(Problem::message)
                .containsExactly(
                        "import of jobs: this is for the role technician or warranty, and Hal has"
                                + " parts; leave that sheet out, or sign in as somebody with the"
                                + " role",
                        "import of claims: this is for the role warranty, and Hal has parts; leave"
                                + " that sheet out, or sign in as somebody with the role");
    }
}
