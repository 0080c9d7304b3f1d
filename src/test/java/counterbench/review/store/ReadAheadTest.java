package counterbench.review.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ReadAheadTest {
    private static Consumer<Consumer<Integer>> numbers(int count) {
        return taker -> IntStream.range(0, count).forEach(taker::accept);
    }

    @Test
    void every_item_is_worked_on_in_order() {
        List<Integer> worked = new ArrayList<>();
        ReadAhead.each(numbers(10_001), n -> n * 2, worked::add);
        assertThat(worked).isEqualTo(IntStream.range(0, 10_001).mapToObj(n -> n * 2).toList());
    }

    @Test
    void what_reading_throws_reaches_the_caller_after_what_was_read_before() {
        List<Integer> worked = new ArrayList<>();
        Consumer<Consumer<Integer>> broken =
                taker -> {
                    numbers(64).accept(taker);
                    throw new IllegalStateException("the file ends here");
                };
        assertThatThrownBy(() -> ReadAhead.each(broken, n -> n, worked::add))
                .hasMessage("the file ends here");
        assertThat(worked).hasSize(64);
    }

    @Test
    void what_the_work_throws_stops_the_reading() {
        assertThatThrownBy(
                        () ->
                                ReadAhead.each(
                                        numbers(1_000_000),
                                        n -> {
                                            throw new IllegalArgumentException("no " + n);
                                        },
                                        n -> {}))
                .hasMessage("no 0");
    }

    @Test
    void what_the_taker_throws_stops_reading_and_work() {
        assertThatThrownBy(
                        () ->
                                ReadAhead.each(
                                        numbers(1_000_000),
                                        n -> n,
                                        n -> {
                                            throw new IllegalArgumentException("not " + n);
                                        }))
                .hasMessage("not 0");
    }
}
