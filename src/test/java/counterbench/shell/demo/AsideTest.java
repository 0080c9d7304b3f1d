package counterbench.shell.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Interrupted;
import counterbench.shared.Refused;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class AsideTest {
    /** What a test leaves of its interrupts must not reach the next. */
    @AfterEach
    void clear() {
        Thread.interrupted();
    }

    @Test
    void what_comes_of_work_is_given_and_what_it_throws_is_thrown() {
        Refused refused = new Refused("a workbook", "the disk is full", "make room");
        try (Aside aside = new Aside()) {
            Supplier<String> good = aside.begin(() -> "done");
            Supplier<String> bad =
                    aside.begin(
                            () -> {
                                throw refused;
                            });
            assertThat(good.get()).isEqualTo("done");
            assertThatThrownBy(bad::get).isSameAs(refused);
        }
    }

    @Test
    void who_waits_may_be_interrupted_while_the_work_goes_on() {
        CountDownLatch end = new CountDownLatch(1);
        try (Aside aside = new Aside()) {
            Supplier<Boolean> work = aside.begin(() -> waited(end));
            Thread.currentThread().interrupt();
            assertThatThrownBy(work::get).isInstanceOf(Interrupted.class);
            assertThat(Thread.interrupted()).isTrue();
            end.countDown();
            assertThat(work.get()).isTrue();
        }
    }

    private static boolean waited(CountDownLatch end) {
        try {
            end.await();
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }
}
