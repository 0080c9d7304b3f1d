package counterbench.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CyclesTest {
    private final Map<String, List<String>> after = new LinkedHashMap<>();

    private CyclesTest step(String id, String... others) {
        after.put(id, List.of(others));
        return this;
    }

    @Test
    void steps_in_an_order_have_none() {
        step("d", "b", "c").step("b", "a").step("c", "a").step("a", "nowhere");
        assertThat(Cycles.of(after)).isEmpty();
    }

    @Test
    void each_circle_is_named_and_what_only_leads_into_one_is_not() {
        step("a", "b").step("b", "c").step("c", "a").step("d", "d").step("e", "a");
        assertThat(Cycles.of(after))
                .containsExactly(List.of("a", "b", "c", "a"), List.of("d", "d"));
    }

    @Test
    void a_circle_behind_a_tail_is_named_without_the_tail() {
        step("tail", "a").step("a", "b").step("b", "a");
        assertThat(Cycles.of(after)).containsExactly(List.of("a", "b", "a"));
    }
}
