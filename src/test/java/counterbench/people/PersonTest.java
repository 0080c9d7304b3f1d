package counterbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Problem;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PersonTest {
    @ParameterizedTest
    @EnumSource
    void the_lead_may_act_in_every_role_and_others_in_their_own(Role role) {
        assertThat(new Person("Ada", Set.of(Role.LEAD)).mayActAs(role)).isTrue();
        assertThat(new Person("Ben", Set.of(Role.PARTS)).mayActAs(role))
                .isEqualTo(role == Role.PARTS);
        assertThat(new Person("Cy", Set.of()).mayActAs(role)).isFalse();
    }

    @Test
    void a_refusal_says_whose_act_it_is() {
        assertThatThrownBy(
                        () ->
                                new Person("Ben", Set.of(Role.WARRANTY, Role.PARTS))
                                        .mustActAs(Role.TECHNICIAN, "mark J-1"))
                .hasMessage(
                        "mark J-1: this is for the role technician, and Ben has parts, warranty;"
                                + " sign in as somebody with that role");
    }

    @ParameterizedTest
    @EnumSource
    void roles_are_written_and_read_again(Role role) {
        Set<Role> roles = EnumSet.of(role, Role.PARTS);
        assertThat(Role.ofList(Role.listed(roles))).isEqualTo(roles);
        assertThat(Role.ofList(null)).isEmpty();
    }

    @Test
    void a_pin_shows_itself_to_nobody() {
        assertThat(new Pin("2468")).hasToString("a PIN");
    }

    @ParameterizedTest
    @CsvSource({"'  Ada  Ode ', Ada Ode", "'Jose\u0301', 'Jos\u00e9'"})
    void a_name_has_one_spelling(String written, String kept) {
        assertThat(PersonName.tidied(written)).isEqualTo(kept);
    }

    @Test
    void a_name_that_is_taken_or_cannot_be_seen_is_refused() {
        assertThat(PersonName.problemOf("Ben", List.of("Ada"))).isEmpty();
        assertThat(PersonName.problemOf("ada", List.of("Ada")))
                .map(Problem::because)
                .contains("there is \"Ada\" already, and letter case tells nobody apart");
        for (String bad : List.of("", " ", "A\u202eda", "A\u0007", "x".repeat(201))) {
            assertThat(PersonName.problemOf(bad, List.of())).isPresent();
        }
    }
}
