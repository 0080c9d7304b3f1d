package counterbench.claims.matching;

import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.shared.Address;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Made-up claims and the remittance that pays them, typed by somebody whose fingers slip. */
final class Remittances {
    private static final String SIGNS = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String[] LABOUR = {"259.60", "266.20", "401.20", "224.20"};
    private static final String[] CHARGE = {"395.00", "420.00", "260.00"};

    private final Random dice;
    private final double slips;
    final List<Candidate> claims = new ArrayList<>();
    final Map<Credit, String> truth = new LinkedHashMap<>();

    Remittances(long seed, double slips, int count) {
        this.dice = new Random(seed);
        this.slips = slips;
        for (int i = 1; i <= count; i++) {
            claim(i);
        }
    }

    private String pick(String... those) {
        return those[dice.nextInt(those.length)];
    }

    private String signs(int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(SIGNS.charAt(dice.nextInt(10)));
        }
        return text.toString();
    }

    private void claim(int number) {
        String name = "CN-%04d".formatted(number);
        String vin =
                pick("0LKRF8D4", "0WBSH08D", "0TRTP3S2") + pick("0NS", "7MS", "XPS") + signs(6);
        String core = "NC-%04d".formatted(number);
        String serial = pick("7P", "4D", "9V") + signs(6);
        BigDecimal parts = new BigDecimal(pick("422.00", "426.25", "435.62", "413.76"));
        LocalDate day = LocalDate.of(2026, 1, 5).plusDays(dice.nextInt(60));
        Claim claim =
                new Claim(
                        new Address(1, number),
                        name,
                        "J-" + number,
                        day,
                        null,
                        new BigDecimal(pick(LABOUR)),
                        parts,
                        new BigDecimal(pick(CHARGE)),
                        null,
                        null,
                        null,
                        null);
        claims.add(
                new Candidate(
                        claim, vin, List.of(new Candidate.Core(core, serial)), BigDecimal.ZERO));
        boolean shortly = dice.nextInt(50) == 0;
        BigDecimal amount = claim.total().orElseThrow();
        truth.put(
                new Credit(
                        "RM-1",
                        String.valueOf(2 * number),
                        shortly ? amount.subtract(BigDecimal.TEN) : amount,
                        day.plusDays(14 + dice.nextInt(30)),
                        slip(name),
                        slip(vin),
                        null,
                        null,
                        Credit.Kind.CLAIM),
                name);
        truth.put(
                new Credit(
                        "RM-1",
                        String.valueOf(2 * number + 1),
                        new BigDecimal(pick(CHARGE)),
                        day.plusDays(14 + dice.nextInt(30)),
                        dice.nextInt(4) == 0 ? null : slip(name),
                        slip(vin),
                        slip(core),
                        slip(serial),
                        Credit.Kind.CORE),
                name);
    }

    /** The name as it was typed: now and then with a sign changed, left out, put in or swapped. */
    private String slip(String name) {
        if (dice.nextDouble() >= slips) {
            return name;
        }
        int at = 1 + dice.nextInt(name.length() - 1);
        String sign = String.valueOf(SIGNS.charAt(dice.nextInt(SIGNS.length())));
        return switch (dice.nextInt(4)) {
            case 0 -> name.substring(0, at) + sign + name.substring(at + 1);
            case 1 -> name.substring(0, at) + name.substring(at + 1);
            case 2 -> name.substring(0, at) + sign + name.substring(at);
            default ->
                    name.substring(0, at - 1)
                            + name.charAt(at)
                            + name.charAt(at - 1)
                            + name.substring(at + 1);
        };
    }

    /** The claim that a proposal takes without asking; null where it asks. */
    static @Nullable String taken(Proposal proposal) {
        return switch (proposal.verdict()) {
            case AS_NAMED -> proposal.credit().claim();
            case SURE -> proposal.shares().get(0).candidate().name();
            case DOUBTFUL, UNKNOWN -> null;
        };
    }
}
