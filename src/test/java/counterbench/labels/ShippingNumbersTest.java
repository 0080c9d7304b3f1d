package counterbench.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.labels.gs1.CompanyPrefix;
import counterbench.labels.gs1.Sscc;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ShippingNumbersTest {
    private static final CompanyPrefix LONG = new CompanyPrefix("7610425123");

    @Test
    void no_two_shipments_of_a_company_have_one_number() {
        Set<Sscc> numbers = new HashSet<>();
        for (int siteNo : new int[] {1, 2, 1023}) {
            ShippingNumbers site = new ShippingNumbers(LONG, siteNo);
            for (long place = 0; place < 9_000; place++) {
                Sscc sscc = site.of(place);
                assertThat(numbers.add(sscc)).isTrue();
                assertThat(site.placeOf(sscc)).contains(place);
            }
        }
    }

    @Test
    void numbers_of_other_sites_and_companies_are_nobodys() {
        Sscc sscc = new ShippingNumbers(LONG, 1).of(7);
        assertThat(new ShippingNumbers(LONG, 2).placeOf(sscc)).isEmpty();
        assertThat(new ShippingNumbers(new CompanyPrefix("7610426"), 1).placeOf(sscc)).isEmpty();
    }

    @Test
    void a_prefix_that_leaves_no_more_is_told() {
        assertThatThrownBy(() -> new ShippingNumbers(LONG, 1).of(10_000))
                .hasMessage(
                        "an SSCC for shipment number 10001 of the site: company prefix 7610425123"
                                + " leaves no more; ask GS1 for a shorter one");
    }
}
