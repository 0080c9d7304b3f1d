package counterbench.shared.packed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackedTableTest {
    @ParameterizedTest
    @ValueSource(strings = {"units.csv", "vin.csv"})
    void every_row_names_its_source(String table) {
        assertThat(PackedTable.rows(table))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("source")).isNotBlank());
    }

    @Test
    void a_table_that_was_not_packed_is_named() {
        assertThatThrownBy(() -> PackedTable.rows("none.csv"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the program was packed without none.csv");
    }
}
