package counterbench.shell.people;

import static counterbench.TypedProgram.SETUP;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.TypedProgram;
import counterbench.db.TestStores;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sites and people, as typed. */
class PeopleCommandsTest {
    private static final String BOTH = "counterbench.db.TestStores#both";

    private static TypedProgram setUp(TestStores kind) {
        TypedProgram program = TypedProgram.withNew(kind);
        program.done(SETUP, "2468");
        return program;
    }

    private static TypedProgram signedIn(TestStores kind) {
        TypedProgram program = setUp(kind);
        program.done("sign-in Ada", "2468");
        return program;
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_store_is_set_up_once_and_the_lead_signs_in(TestStores kind) {
        try (TypedProgram program = TypedProgram.withNew(kind)) {
            assertThat(program.type("sign-in Ada", "2468").messages())
                    .hasSize(1)
                    .first()
                    .asString()
                    .startsWith("sign-in: the store is not set up yet; type setup --site NORTH");
            assertThat(program.done(SETUP, "2468"))
                    .isEqualToIgnoringNewLines(
                            "site NORTH \"North garage\" is set up: America/Chicago, USD, journal"
                                    + " entry 1");
            assertThat(program.type(SETUP, "2468").messages().get(0))
                    .startsWith("this act: nobody is signed in");
            assertThat(program.done("sign-in Ada", "2468"))
                    .isEqualToIgnoringNewLines("Ada (lead) is signed in at NORTH");
            assertThat(program.type(SETUP).messages())
                    .containsExactly(
                            "site \"NORTH\": site NORTH is set up already; nothing is left to do,"
                                    + " or choose another short name");
            assertThat(program.done("who --format csv"))
                    .isEqualToIgnoringNewLines("person,roles,siteAda,lead,NORTH");
            assertThat(program.done("sign-out")).isEqualToIgnoringNewLines("Ada is signed out");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    --zone America/Chicago | --zone America/Chicaco | zone "America/Chicaco": there is no such time zone; did you mean America/Chicago?
                    --zone America/Chicago | --zone +05:00 | zone "+05:00": there is no such time zone; write it as continent and city, such as America/Chicago
                    --currency USD | --currency usd | currency "usd": there is no such currency; write its three letters in capitals, such as USD or EUR
                    --currency USD | --currency XXX | currency "XXX": there is no such currency; write its three letters in capitals, such as USD or EUR
                    --site NORTH | --site 'N O' | site "N O": a short name has up to 40 letters, digits, dots, hyphens or underscores; write it so, such as NORTH
                    --lead Ada | --job-days 0 --lead Ada | job-days "0": patience is between 1 and 3650 days; write a number of days in between
                    --lead Ada | --job-days 14 | setup: the first site needs a lead; add --lead with a name
                    """)
    void setup_refuses_what_cannot_be(String good, String bad, String message) {
        try (TypedProgram program = TypedProgram.withNew(TestStores.H2)) {
            TypedProgram.Output output = program.type(SETUP.replace(good, bad), "2468");
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.messages()).containsExactly(message);
            assertThat(program.type("person list").messages().get(0))
                    .startsWith("person list: the store is not set up yet");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_further_site_is_set_up_by_a_lead_and_acts_must_say_where(TestStores kind) {
        try (TypedProgram program = signedIn(kind)) {
            String south =
                    "setup --site SOUTH --name South --zone Europe/Paris --currency EUR"
                            + " --credit-days 30";
            TypedProgram.Output made = program.type(south);
            assertThat(made.out()).contains("site SOUTH").contains("journal entry 1");
            assertThat(made.messages())
                    .containsExactly(
                            "the store has two sites now, and this shell stays at NORTH; for SOUTH"
                                    + " add --site SOUTH to an act, or sign-in NAME --site SOUTH;"
                                    + " scripts set COUNTERBENCH_SITE");
            assertThat(program.done("who --format csv"))
                    .isEqualToIgnoringNewLines("person,roles,siteAda,lead,NORTH");
            assertThat(program.type("journal show").status()).isEqualTo(Status.DONE);
            String east = "setup --site EAST --name East --zone Europe/Paris --currency EUR";
            assertThat(program.type(east).messages()).isEmpty();
            program.again("COUNTERBENCH_CHECKED", "yes");
            assertThat(program.done("sign-in Ada", "2468"))
                    .contains(
                            "the store has several sites: name one with each act, or for this shell with sign-in");
            assertThat(program.type("journal show").messages())
                    .containsExactly(
                            "journal show: the store has several sites: EAST, NORTH, SOUTH; say which"
                                    + " with --site, or set COUNTERBENCH_SITE");
            assertThat(program.done("journal show --site SOUTH")).contains("setup");
            program.again("COUNTERBENCH_SITE", "SOUTHH");
            assertThat(program.type("journal show").messages())
                    .containsExactly("site \"SOUTHH\": there is no such site; did you mean SOUTH?");
            assertThat(program.done("journal verify --site NORTH")).contains("holds");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void scripts_sign_in_and_choose_the_site_by_their_environment(TestStores kind) {
        try (TypedProgram program = TypedProgram.withNew(kind)) {
            program.again("COUNTERBENCH_PIN", "13579").again("COUNTERBENCH_PERSON", "Ada");
            program.done(SETUP);
            assertThat(program.done("who --format csv")).contains("Ada,lead,NORTH");
            program.done("person add Ben --role technician", "8642");
            program.again("COUNTERBENCH_PIN", "1111");
            TypedProgram.Output output = program.type("who");
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.messages())
                    .containsExactly("sign-in of \"Ada\": that is not the PIN; type it again");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void people_are_added_changed_and_ended_by_a_lead(TestStores kind) {
        try (TypedProgram program = signedIn(kind)) {
            assertThat(program.done("person add \"Ben  Ode\" --role parts --role warranty", "8642"))
                    .isEqualToIgnoringNewLines(
                            "Ben  Ode may act as parts, warranty: entry 2 of site NORTH");
            assertThat(program.type("person add 'ben ode' --role parts", "8642").messages())
                    .containsExactly(
                            "name \"ben ode\": there is \"Ben Ode\" already, and letter case tells"
                                    + " nobody apart; choose another name");
            program.done("person role 'Ben Ode' technician");
            assertThat(program.done("person list --format csv"))
                    .contains("Ada,lead,set")
                    .contains("Ben Ode,technician,set");
            assertThat(program.type("person role 'Ben Ode' technician").messages())
                    .containsExactly(
                            "person role \"Ben Ode\" technician: Ben Ode has just these roles"
                                    + " already; nothing is left to do");
            assertThat(program.type("person end Ada").messages())
                    .containsExactly(
                            "person end Ada: nobody would be lead any more; make somebody else lead"
                                    + " first, with person role");
            program.done("person end 'Ben Ode'");
            assertThat(program.type("sign-in 'Ben Ode'", "8642").messages())
                    .containsExactly(
                            "sign-in of \"Ben Ode\": acts no more; a lead can change that with"
                                    + " person role");
            program.done("person role 'Ben Ode' lead");
            program.done("person end Ada");
            assertThat(program.type("person add Cy --role parts", "8642").messages())
                    .containsExactly("this act: Ada acts no more; sign in as somebody else");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void each_acts_only_in_the_own_role(TestStores kind) {
        try (TypedProgram program = signedIn(kind)) {
            program.done("person add Ben --role parts", "8642");
            program.done("sign-in Ben", "8642");
            for (String line :
                    List.of(
                            "person add Cy --role lead",
                            "person pin Ada",
                            "person role Ben lead",
                            "person end Ada",
                            "setup --site S --name S --zone UTC --currency USD")) {
                TypedProgram.Output output = program.type(line, "1234");
                assertThat(output.status()).as(line).isEqualTo(Status.REFUSED);
                assertThat(output.err())
                        .contains("this is for the role lead, and Ben has parts; sign in as");
            }
            program.done("person pin", "8642", "97531");
            assertThat(program.type("sign-in Ben", "8642").status()).isEqualTo(Status.REFUSED);
            program.done("sign-in Ben", "97531");
            assertThat(program.type("person pin", "0000", "1234").messages())
                    .containsExactly("sign-in of \"Ben\": that is not the PIN; type it again");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void roles_that_another_shell_changes_hold_at_once_for_who_is_signed_in(TestStores kind) {
        try (TypedProgram ada = signedIn(kind);
                TypedProgram ben = ada.another()) {
            ada.done("person add Ben --role lead", "8642");
            ben.done("sign-in Ben", "8642");
            ada.done("person role Ben parts");
            assertThat(ben.type("person end Ada").err())
                    .contains("this is for the role lead, and Ben has parts");
            ada.done("person end Ben");
            assertThat(ben.type("import paper").messages())
                    .containsExactly("this act: Ben acts no more; sign in as somebody else");
            TypedProgram.Output who = ben.type("who --format csv");
            assertThat(who.status()).isEqualTo(Status.DONE);
            assertThat(who.out()).contains("Ben,none,NORTH");
            assertThat(who.messages())
                    .containsExactly(
                            "Ben is signed in and acts no more; sign in as somebody else, or have a"
                                    + " lead give roles again: person role Ben ROLE");
            ada.done("person role Ben technician");
            assertThat(ben.done("who --format csv")).contains("Ben,technician,NORTH");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void wrong_pins_are_counted_over_all_shells(TestStores kind) {
        try (TypedProgram program = setUp(kind);
                TypedProgram other = program.another()) {
            for (int i = 0; i < 4; i++) {
                TypedProgram at = i % 2 == 0 ? program : other;
                assertThat(at.type("sign-in Ada", "1111").messages())
                        .containsExactly("sign-in of \"Ada\": that is not the PIN; type it again");
            }
            assertThat(other.type("sign-in Ada", "1111").messages())
                    .containsExactly(
                            "sign-in of \"Ada\": that is not the PIN; wait 30 seconds, then type it"
                                    + " again");
            assertThat(program.type("sign-in Ada", "2468").err())
                    .startsWith("sign-in of \"Ada\": too many wrong PINs were typed; wait ");
        }
    }

    @Test
    void bad_pins_are_refused_without_being_repeated() {
        try (TypedProgram program = TypedProgram.withNew(TestStores.H2)) {
            for (String pin : List.of("123", "1234567890123", "12a4", "١٢٣٤")) {
                TypedProgram.Output output = program.type(SETUP, pin);
                assertThat(output.messages())
                        .containsExactly(
                                "new PIN: it is not 4 to 12 digits; choose another, of digits"
                                        + " only");
            }
            assertThat(program.type(SETUP).messages())
                    .containsExactly("PIN: none was given; type it, or set COUNTERBENCH_PIN");
        }
    }

    @Test
    void a_pin_for_somebody_else_is_never_looked_for_in_the_environment() {
        try (TypedProgram program = signedIn(TestStores.H2)) {
            assertThat(program.type("person add Ben --role parts").messages())
                    .containsExactly(
                            "PIN: none was given; type it; a script hands it in as the next line"
                                    + " of its input");
        }
    }

    @Test
    void no_pin_is_written_anywhere_in_the_clear() throws IOException {
        Path home;
        try (TypedProgram program = signedIn(TestStores.H2)) {
            home = program.home();
            TypedProgram.Output added = program.type("person add Ben --role parts", "86428642");
            TypedProgram.Output refused = program.type("sign-in Ben", "86428641");
            assertThat(added.all() + refused.all()).doesNotContain("8642864");
            assertThat(program.done("journal show 2")).contains("Ben").doesNotContain("86428642");
        }
        try (Stream<Path> files = Files.walk(home)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                assertThat(bytes).as(file.toString()).doesNotContain("86428642");
            }
        }
    }
}
