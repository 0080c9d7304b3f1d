package counterbench.claims.matching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.text.similarity.DamerauLevenshteinDistance;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The library's string distances against published values. */
class PublishedDistancesTest {
    /** The pairs of Winkler (1990) and of the record-linkage literature after it. */
    @ParameterizedTest
    @CsvSource({
        "MARTHA, MARHTA, 0.9611",
        "DWAYNE, DUANE, 0.84",
        "DIXON, DICKSONX, 0.8133",
        "william, williams, 0.975"
    })
    void jaro_winkler_is_as_published(String one, String other, double published) {
        assertThat(new JaroWinklerSimilarity().apply(one, other))
                .isCloseTo(published, within(5e-5));
    }

    /** Swapped neighbours are one edit here and two for Levenshtein. From memory, recomputed. */
    @ParameterizedTest
    @CsvSource({"CA, AC, 1, 2", "kitten, sitting, 3, 3", "damerau, aderua, 3, 4"})
    void edits_are_as_published(String one, String other, int damerau, int levenshtein) {
        assertThat(new DamerauLevenshteinDistance().apply(one, other)).isEqualTo(damerau);
        assertThat(LevenshteinDistance.getDefaultInstance().apply(one, other))
                .isEqualTo(levenshtein);
    }

    /** The restricted distance (optimal string alignment) is 3, the unrestricted one 2. */
    @ParameterizedTest
    @CsvSource({"CA, ABC, 3"})
    void the_library_s_distance_is_the_restricted_one(String one, String other, int published) {
        assertThat(new DamerauLevenshteinDistance().apply(one, other)).isEqualTo(published);
    }

    @ParameterizedTest
    @CsvSource({
        "CN-017, CN-071, 1",
        "CN-017, cn 017, 0",
        "CN-017, CN-170, 3",
        "0LKRF8D40NS000592, 0LKRF8D4ONS00592, 2",
        "0LKRF8D40NS000592, 0LKRF8D49NN000623, 3"
    })
    void slips_are_counted_as_hands_make_them(String one, String other, int slips) {
        assertThat(Slips.between(one, other)).isEqualTo(slips);
    }
}
