package counterbench.shell.console;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shell.SampleCommands;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CompletionTest {
    private final Completion completion =
            new Completion(SampleCommands.shell().commands(), Optional::empty);

    /**
     * What is offered behind the words; JLine itself leaves out what does not fit the begun one.
     */
    private List<String> offered(String begun, String... before) {
        return completion.offers(List.of(before), begun).map(Offer::word).toList();
    }

    @Test
    void names_of_commands_are_offered_word_by_word() {
        assertThat(offered("")).contains("box", "fail", "help", "version").doesNotHaveDuplicates();
        assertThat(offered("", "box")).containsExactly("show", "take");
        assertThat(offered("", "nonsense")).isEmpty();
    }

    @Test
    void options_are_offered_once() {
        assertThat(offered("--", "box", "take", "--part", "P", "--note", "n"))
                .containsExactly("--at", "--note", "--dry-run", "--help");
    }

    @Test
    void an_option_offers_its_values() {
        assertThat(offered("", "box", "show", "--format")).containsExactly("table", "json", "csv");
        assertThat(offered("--format=j", "box", "show"))
                .containsExactly("--format=table", "--format=json", "--format=csv");
        assertThat(offered("", "box", "take", "--part")).containsExactly("QM-4470-K", "QM-4490-K");
        assertThat(offered("", "box", "take", "--at")).isEmpty();
    }

    @Test
    void arguments_offer_their_values_by_place() {
        assertThat(offered("", "pick")).containsExactly("J-1", "J-2");
        assertThat(offered("", "pick", "J-1")).containsExactly("red", "green");
        assertThat(offered("", "pick", "J-1", "red")).isEmpty();
    }

    @Test
    void help_offers_the_commands() {
        assertThat(offered("", "help")).contains("box", "version").doesNotHaveDuplicates();
        assertThat(offered("", "help", "box")).containsExactly("show", "take");
    }

    @Test
    void a_store_that_cannot_be_read_offers_nothing() {
        assertThat(offered("", "act", "--site")).isEmpty();
        assertThat(offered("", "sad")).isEmpty();
    }
}
