package counterbench.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TokenizerTest {
    @Test
    void blanks_part_words() {
        assertThat(Tokenizer.split("  kit   show\tK-1 ")).containsExactly("kit", "show", "K-1");
        assertThat(Tokenizer.split("   ")).isEmpty();
    }

    @Test
    void quotes_hold_words_together_and_may_be_empty() {
        assertThat(Tokenizer.split("a 'b c' \"d \\\"e\\\" \\\\ f\" '' g\"h i\"j"))
                .containsExactly("a", "b c", "d \"e\" \\ f", "", "gh ij");
    }

    @Test
    void within_single_quotes_everything_stands_for_itself() {
        assertThat(Tokenizer.split("'a\\ \"b'")).containsExactly("a\\ \"b");
    }

    @Test
    void a_backslash_takes_the_next_character_as_it_is() {
        assertThat(Tokenizer.split("a\\ b \\# \\")).containsExactly("a b", "#", "\\");
    }

    @Test
    void a_comment_begins_where_a_word_could() {
        assertThat(Tokenizer.split("a#b # c 'd")).containsExactly("a#b");
        assertThat(Tokenizer.split("# all of it")).isEmpty();
    }

    @Test
    void an_open_quote_is_refused() {
        assertThatThrownBy(() -> Tokenizer.split("kit show 'K-1"))
                .isInstanceOf(UsageError.class)
                .hasMessageContaining("the quote ' is not closed");
    }
}
