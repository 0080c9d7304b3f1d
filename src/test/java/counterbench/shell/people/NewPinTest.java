package counterbench.shell.people;

import static counterbench.TypedProgram.SETUP;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.TypedProgram;
import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.people.store.StaffBook;
import counterbench.shell.FakeShell;
import counterbench.shell.Status;
import org.junit.jupiter.api.Test;

/** A new PIN that is typed wrongly. */
class NewPinTest {
    private static final String TOO_SHORT =
            "new PIN: it is not 4 to 12 digits; choose another, of digits only";
    private static final String NOT_ALIKE =
            "new PIN: the two are not the same; type it twice alike";

    private static FakeShell shell(Store store) {
        return new FakeShell(new SetupCommand(() -> store));
    }

    @Test
    void a_person_who_slips_is_asked_again() {
        try (Store store = TestStores.H2.open()) {
            FakeShell.Output output =
                    shell(store).typingUnseen("12", "2468", "2469", "2468", "2468").line(SETUP);
            assertThat(output.status()).as(output.screen()).isEqualTo(Status.DONE);
            assertThat(output.messages()).startsWith(TOO_SHORT, NOT_ALIKE).hasSize(3);
            assertThat(new StaffBook(store).sites()).hasSize(1);
        }
    }

    @Test
    void three_slips_end_it_and_nothing_is_set_up() {
        try (Store store = TestStores.H2.open()) {
            FakeShell.Output output =
                    shell(store)
                            .typingUnseen("12", "ab", "2468", "2469", "2468", "2468")
                            .line(SETUP);
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.messages()).containsExactly(TOO_SHORT, TOO_SHORT, NOT_ALIKE);
            assertThat(new StaffBook(store).sites()).isEmpty();
        }
    }

    @Test
    void a_script_is_refused_at_once() {
        try (TypedProgram program = TypedProgram.withNew(TestStores.H2)) {
            TypedProgram.Output output = program.type(SETUP, "12", "2468");
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.messages()).containsExactly(TOO_SHORT);
        }
    }
}
