package counterbench.labels.gs1;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ElementReaderTest {
    /** In the published vectors, ^ stands for the separator; a scan begins with none. */
    private static String scan(String published) {
        return published.substring(1).replace('^', ElementString.SEPARATOR);
    }

    /** The tests of GS1's Barcode Syntax Engine. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {
                "(01)12345678901231(10)12345 ^01123456789012311012345",
                "(10)12345(11)991225 ^1012345^11991225",
                "(3100)123456(10)12345 ^31001234561012345",
                "(10)12345\\(11)991225 ^1012345(11)991225",
                "(01)12312312312333(10)ABC123(99)TESTING ^011231231231233310ABC123^99TESTING"
            })
    void published_strings_are_read_and_written_both_ways(String bracketed, String scanned) {
        ElementString read = ElementReader.bracketed(bracketed);
        assertThat(read.scanned()).isEqualTo(scan(scanned));
        assertThat(ElementReader.scanned(scan(scanned))).isEqualTo(read);
        assertThat(read.bracketed()).isEqualTo(bracketed);
    }

    /** The tests of GS1's Barcode Syntax Engine. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "(10)(11)98765",
                "(10)12345(11)",
                "(1A)12345",
                "()12345",
                "(15",
                "(01)123456789012312(10)12345",
                "(17)9(90)217",
                "12345",
                ""
            })
    void published_faults_with_brackets_are_refused(String bracketed) {
        assertThatThrownBy(() -> ElementReader.bracketed(bracketed)).isInstanceOf(Refused.class);
    }

    /** The tests of GS1's Barcode Syntax Engine. */
    @ParameterizedTest
    @ValueSource(strings = {"^0112345678901234", "^011234567890123", "^179^90217", "^", "^1"})
    void published_faults_of_scans_are_refused(String published) {
        assertThatThrownBy(() -> ElementReader.scanned(scan(published)))
                .isInstanceOf(Refused.class);
    }

    /** GS1 General Specifications, section 7.8, and the tests of GS1's Barcode Syntax Engine. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "^0112345678901231^1012345",
                "^01123456789012311012345^",
                "^0112345678901231^1012345^",
                "^^01123456789012311012345"
            })
    void superfluous_separators_are_tolerated(String published) {
        assertThat(ElementReader.scanned(scan(published)).bracketed())
                .isEqualTo("(01)12345678901231(10)12345");
    }

    @Test
    void two_separators_in_a_row_are_not() {
        assertThatThrownBy(() -> ElementReader.scanned(scan("^1012345^^11991225")))
                .isInstanceOf(Refused.class);
    }

    @Test
    void a_refusal_shows_what_cannot_be_seen() {
        assertThatThrownBy(() -> ElementReader.scanned("10AB\u001d17261301"))
                .hasMessage(
                        "scan \"10AB\\u001d17261301\": (17) 261301: there is no such day; scan the"
                                + " label again, or type what it stands for");
        assertThatThrownBy(() -> ElementReader.scanned("10A\u001b[31m"))
                .hasMessageContaining("GS1 labels have no \"\\u001b\"");
    }

    @Test
    void a_refusal_names_the_fault() {
        assertThatThrownBy(() -> ElementReader.scanned("0112345678901234"))
                .hasMessageContaining("its last digit does not follow from the others");
        assertThatThrownBy(() -> ElementReader.scanned("0112345"))
                .hasMessageContaining("it has 5 characters, not 14");
        assertThatThrownBy(() -> ElementReader.scanned("0512345"))
                .hasMessageContaining("no application identifier begins at \"0512345\"");
        assertThatThrownBy(() -> ElementReader.bracketed("(10)A B"))
                .hasMessageContaining("GS1 labels have no \" \"");
        assertThatThrownBy(() -> ElementReader.bracketed("(21)A(21)B"))
                .hasMessageContaining("(21) is both A and B");
    }

    /** GS1 General Specifications, figure 7.11-1: what of 7-bit text is in no value. */
    @ParameterizedTest
    @ValueSource(strings = {" ", "#", "$", "@", "^", "~", "[", "\\", "`", "{", "|", "\u00e9"})
    void characters_outside_the_set_of_82_are_faults(String character) {
        assertThat(Element.faultOf("10", "A" + character)).isPresent();
    }

    @Test
    void the_set_has_82_characters() {
        long count =
                java.util.stream.IntStream.range(0, 128)
                        .filter(c -> Element.faultOf("10", Character.toString(c)).isEmpty())
                        .count();
        assertThat(count).isEqualTo(82);
    }

    @Test
    void identifiers_without_a_name_of_ours_are_read_by_their_first_digits() {
        ElementString read = ElementReader.scanned("3921012345\u001d3110000123422SIX");
        assertThat(read.bracketed()).isEqualTo("(3921)012345(3110)000123(422)SIX");
    }

    @Test
    void composite_values_are_checked_part_by_part() {
        assertThat(Element.faultOf("8003", "01234567890128SERIAL")).isEmpty();
        assertThat(Element.faultOf("8003", "01234567890128")).isEmpty();
        assertThat(Element.faultOf("8003", "11234567890128")).isPresent();
        assertThat(Element.faultOf("8003", "01234567890129")).isPresent();
        assertThat(Element.faultOf("8008", "26030914")).isEmpty();
        assertThat(Element.faultOf("8008", "260309145961")).isPresent();
        assertThat(Element.faultOf("30", "123456789")).isPresent();
    }
}
