package counterbench.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.jooq.Record1;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TogetherTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void every_name_is_asked_about_once_however_many_there_are(TestStores stores) {
        List<Integer> names = IntStream.range(0, 2 * Together.MOST + 1).boxed().toList();
        try (Store store = stores.open()) {
            List<Record1<Integer>> found =
                    store.read(sql -> Together.fetch(sql, names, n -> DSL.select(DSL.val(n))));
            assertThat(found)
                    .extracting(Record1::value1)
                    .containsExactlyInAnyOrderElementsOf(names);
        }
    }

    @Test
    void of_no_names_nothing_is_asked() {
        try (Store store = TestStores.H2.open()) {
            assertThat(
                            store.<List<Record1<Integer>>>read(
                                    sql ->
                                            Together.<Integer, Record1<Integer>>fetch(
                                                    sql, List.of(), n -> DSL.selectOne())))
                    .isEmpty();
        }
    }
}
