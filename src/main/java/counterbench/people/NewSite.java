package counterbench.people;

import counterbench.labels.gs1.CompanyPrefix;
import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.Visible;
import counterbench.shared.units.Weight;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A site as somebody asks for it, not checked yet.
 *
 * @param site the short name that people will type
 * @param name the full name
 * @param zone a time zone's name, such as {@code America/Chicago}
 * @param currency a currency's code, such as {@code USD}
 * @param patience how long the site waits before it is reminded
 * @param companyPrefix the GS1 company prefix; null where it has none
 * @param shipmentLimit the most that it lets a shipment weigh; null where it sets no limit
 */
public record NewSite(
        String site,
        String name,
        String zone,
        String currency,
        Site.Patience patience,
        @Nullable String companyPrefix,
        @Nullable Weight shipmentLimit) {
    private static final Pattern SHORT = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_PATIENCE = 3_650;

    /** A site without a company prefix and without a limit for shipments. */
    public NewSite(String site, String name, String zone, String currency, Site.Patience patience) {
        this(site, name, zone, currency, patience, null, null);
    }

    /**
     * The site, if all that is said of it can be.
     *
     * @param no the number that it gets
     * @param taken short names that other sites have
     * @throws Refused with everything that is wrong
     */
    public Site checked(int no, Set<String> taken) {
        List<Problem> problems = new ArrayList<>();
        shortNameProblem(taken).ifPresent(problems::add);
        nameProblem().ifPresent(problems::add);
        zoneProblem().ifPresent(problems::add);
        currencyProblem().ifPresent(problems::add);
        patienceProblems(problems);
        companyPrefixProblem().ifPresent(problems::add);
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return new Site(
                no,
                site,
                name,
                ZoneId.of(zone),
                Currency.getInstance(currency),
                patience,
                companyPrefix,
                shipmentLimit);
    }

    private Optional<Problem> shortNameProblem(Set<String> taken) {
        String asked = "site \"" + site + "\"";
        if (!SHORT.matcher(site).matches()) {
            return problem(
                    asked,
                    "a short name has up to 40 letters, digits, dots, hyphens or underscores",
                    "write it so, such as NORTH");
        }
        return taken.stream()
                .filter(other -> other.equalsIgnoreCase(site))
                .findFirst()
                .flatMap(
                        other ->
                                problem(
                                        asked,
                                        "site " + other + " is set up already",
                                        "nothing is left to do, or choose another short name"));
    }

    private Optional<Problem> nameProblem() {
        boolean good =
                !name.isBlank() && name.length() <= LONGEST_NAME && Visible.text(name).equals(name);
        return good
                ? Optional.empty()
                : problem(
                        "name \"" + name + "\"",
                        "a name has 1 to " + LONGEST_NAME + " characters, all of them visible",
                        "write it so, such as \"North garage\"");
    }

    private Optional<Problem> zoneProblem() {
        Set<String> known = ZoneId.getAvailableZoneIds();
        return known.contains(zone)
                ? Optional.empty()
                : problem(
                        "zone \"" + zone + "\"",
                        "there is no such time zone",
                        NearMatch.of(zone, known)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("write it as continent and city, such as America/Chicago"));
    }

    private Optional<Problem> currencyProblem() {
        boolean known =
                Currency.getAvailableCurrencies().stream()
                        .filter(c -> c.getDefaultFractionDigits() >= 0)
                        .anyMatch(c -> c.getCurrencyCode().equals(currency));
        return known
                ? Optional.empty()
                : problem(
                        "currency \"" + currency + "\"",
                        "there is no such currency",
                        "write its three letters in capitals, such as USD or EUR");
    }

    private void patienceProblems(List<Problem> problems) {
        daysProblem("job-days", patience.jobDays()).ifPresent(problems::add);
        daysProblem("acknowledgement-days", patience.acknowledgementDays())
                .ifPresent(problems::add);
        daysProblem("credit-days", patience.creditDays()).ifPresent(problems::add);
    }

    private static Optional<Problem> daysProblem(String what, int days) {
        return days >= 1 && days <= LONGEST_PATIENCE
                ? Optional.empty()
                : problem(
                        what + " \"" + days + "\"",
                        "patience is between 1 and " + LONGEST_PATIENCE + " days",
                        "write a number of days in between");
    }

    private Optional<Problem> companyPrefixProblem() {
        return Optional.ofNullable(companyPrefix)
                .flatMap(CompanyPrefix::faultOf)
                .map(
                        fault ->
                                new Problem(
                                        "company prefix \"" + companyPrefix + "\"",
                                        fault,
                                        "copy it from GS1's licence, or leave it out"));
    }

    private static Optional<Problem> problem(String asked, String because, String todo) {
        return Optional.of(new Problem(asked, because, todo));
    }
}
