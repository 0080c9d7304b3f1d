package counterbench.acts.desk;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.store.ReadClaims;
import counterbench.acts.store.ReadDrafts;
import counterbench.claims.Claim;
import counterbench.claims.draft.Draft;
import counterbench.db.TestStores;
import counterbench.shared.Site;
import counterbench.shell.Larkmere;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the invented garage claimed is what its drafts say. */
class DemoDraftsTest {
    /** Of its vehicle nobody knows how many rams it has, and so what is paid for it. */
    private static final String NOBODY_KNOWS = "S-252";

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void every_claim_of_the_garage_agrees_with_its_draft_line_by_line(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            for (Site site : List.of(Larkmere.NORTH, Larkmere.SOUTH)) {
                Map<String, Draft> drafts =
                        new ReadDrafts(larkmere.store())
                                .run(site, Larkmere.AS_OF, found -> true, n -> {}).stream()
                                        .map(ClaimDraft::draft)
                                        .filter(Draft::isWhole)
                                        .collect(Collectors.toMap(Draft::job, d -> d));
                List<Claim> claims =
                        new ReadClaims(larkmere.store())
                                .list(site, Larkmere.AS_OF, line -> true, n -> {}).stream()
                                        .map(ClaimLine::claim)
                                        .filter(claim -> !claim.job().equals(NOBODY_KNOWS))
                                        .toList();

                assertThat(claims).hasSizeGreaterThan(40);
                assertThat(claims)
                        .extracting(claim -> lines(claim))
                        .containsExactlyElementsOf(
                                claims.stream()
                                        .map(claim -> lines(claim, drafts.get(claim.job())))
                                        .toList());
            }
        }
    }

    private static String lines(Claim claim) {
        return lines(
                claim.claim(),
                claim.labourHours(),
                claim.labourAmount(),
                claim.partsAmount(),
                claim.coreCharge());
    }

    private static String lines(Claim claim, @Nullable Draft draft) {
        return draft == null
                ? claim.claim() + " has no draft"
                : lines(
                        claim.claim(),
                        draft.hours(),
                        draft.labour(),
                        draft.parts(),
                        draft.coreCharge());
    }

    private static String lines(String claim, @Nullable BigDecimal... amounts) {
        return java.util.Arrays.stream(amounts)
                .map(a -> a == null ? "none" : a.stripTrailingZeros().toPlainString())
                .collect(Collectors.joining(" ", claim + " ", ""));
    }
}
