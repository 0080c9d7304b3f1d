package counterbench.job;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.stock.Use;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OnVehicleTest {
    private static final Instant END = TestJobs.COMPLETED;

    @Test
    void new_and_old_are_kept_apart_and_less_what_was_taken_off() {
        OnVehicle there =
                at(
                        use(4, Use.Condition.NEW, null, END),
                        use(3, Use.Condition.REUSED, null, END),
                        use(1, Use.Condition.TAKEN_OFF, Use.Condition.NEW, END),
                        use(2, Use.Condition.TAKEN_OFF, Use.Condition.REUSED, END));

        assertThat(there.fittedNew("QM-1")).isEqualTo(Quantity.of(3));
        assertThat(there.refittedOld("QM-1")).isEqualTo(Quantity.of(1));
        assertThat(there.total("QM-1")).isEqualTo(Quantity.of(4));
        assertThat(there.parts()).containsExactly("QM-1");
    }

    @Test
    void what_happens_after_completion_does_not_count() {
        OnVehicle there =
                at(
                        use(1, Use.Condition.NEW, null, END),
                        use(2, Use.Condition.NEW, null, END.plusMillis(1)));

        assertThat(there.fittedNew("QM-1")).isEqualTo(Quantity.ONE);
    }

    @Test
    void what_was_scrapped_put_back_or_put_on_the_core_never_was_on_the_vehicle() {
        OnVehicle there =
                at(
                        use(1, Use.Condition.SCRAPPED, null, END),
                        use(1, Use.Condition.PUT_BACK, null, END),
                        use(1, Use.Condition.ON_CORE, null, END));

        assertThat(there.parts()).isEmpty();
        assertThat(there.total("QM-1")).isEqualTo(Quantity.ZERO);
    }

    @Test
    void old_numbers_count_under_the_part_of_the_pack() {
        OnVehicle there =
                OnVehicle.at(END, List.of(use(1, Use.Condition.NEW, null, END)), part -> "QM-2");

        assertThat(there.fittedNew("QM-2")).isEqualTo(Quantity.ONE);
    }

    private static OnVehicle at(Use... uses) {
        return OnVehicle.at(END, List.of(uses), part -> part);
    }

    private static Use use(
            long quantity, Use.Condition condition, Use.@Nullable Condition was, Instant at) {
        return new Use(
                new Address(1, 1),
                "J-118",
                "QM-1",
                Quantity.of(quantity),
                condition,
                at,
                null,
                null,
                null,
                was,
                null,
                null);
    }
}
