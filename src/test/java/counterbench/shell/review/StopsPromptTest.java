package counterbench.shell.review;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.review.store.Kept;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.bench.JobOpenCommand;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The prompt in the invented garage, of whose expected findings 24 are open stops in the north. */
class StopsPromptTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void it_says_site_person_and_open_stops(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell shell =
                    larkmere.shellOf(
                            new Person("Maren", Set.of(Role.LEAD)),
                            new FindingSettleCommand(larkmere::store, larkmere.sites()));
            StopsPrompt prompt =
                    new StopsPrompt(shell.session(), larkmere::store, () -> Larkmere.AS_OF);

            assertThat(prompt.text()).isEqualTo("NORTH Maren, ? stop> ");

            Kept.review(larkmere.store(), Larkmere.NORTH, Larkmere.AS_OF);
            assertThat(prompt.text()).isEqualTo("NORTH Maren, 24 stop> ");

            assertThat(shell.line("finding settle F-7V1TR3G35S --reason \"renewed\"").status())
                    .isEqualTo(Status.DONE);
            assertThat(prompt.text()).isEqualTo("NORTH Maren, 23 stop> ");

            shell.session().signOut();
            assertThat(prompt.text()).isEqualTo("counterbench> ");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_site_that_begins_is_counted_at_once(TestStores stores) {
        try (Larkmere larkmere = Larkmere.withPacks(stores)) {
            FakeShell shell =
                    larkmere.shellOf(
                            Larkmere.OTIS, new JobOpenCommand(larkmere::store, larkmere.sites()));
            StopsPrompt prompt =
                    new StopsPrompt(shell.session(), larkmere::store, () -> Larkmere.AS_OF);
            assertThat(prompt.text()).isEqualTo("NORTH Otis> ");

            var opened = shell.line("job open N-1 --campaign HB-0417 --vin 0LKRF8D41RN004526");
            assertThat(opened.status()).as(opened.err()).isEqualTo(Status.DONE);
            assertThat(prompt.text()).isEqualTo("NORTH Otis> ");
        }
    }
}
