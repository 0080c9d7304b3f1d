package counterbench.care.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckFolderTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0 KB",
        "1, 1 KB",
        "1024, 1 KB",
        "1025, 2 KB",
        "1048575, 1024 KB",
        "1048576, 1 MB",
        "2097151, 1 MB"
    })
    void what_is_below_a_megabyte_is_told_in_kilobytes(long bytes, String words) {
        assertThat(CheckFolder.words(bytes)).isEqualTo(words);
    }
}
