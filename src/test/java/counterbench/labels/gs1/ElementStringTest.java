package counterbench.labels.gs1;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ElementStringTest {
    private static final long SEED = 41_017;
    private static final String CHARACTERS =
            "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz";
    private static final List<String> IDENTIFIERS =
            List.of(
                    "00", "01", "02", "10", "11", "13", "15", "17", "20", "21", "240", "241", "30",
                    "3103", "37", "400", "402", "410", "417", "7003", "8003", "8004", "90", "91",
                    "92", "99");

    @Test
    void what_is_written_is_read_as_the_same() {
        Random random = new Random(SEED);
        for (int round = 0; round < 5_000; round++) {
            ElementString made = any(random);
            String seen = "seed " + SEED + ", round " + round + ": " + made.bracketed();
            assertThat(ElementReader.scanned(made.scanned())).as(seen).isEqualTo(made);
            assertThat(ElementReader.bracketed(made.bracketed())).as(seen).isEqualTo(made);
        }
    }

    private static ElementString any(Random random) {
        List<String> identifiers = new ArrayList<>(IDENTIFIERS);
        Collections.shuffle(identifiers, random);
        return new ElementString(
                identifiers.subList(0, 1 + random.nextInt(6)).stream()
                        .map(ai -> new Element(ai, value(ai, random)))
                        .toList());
    }

    private static String value(String ai, Random random) {
        return switch (ai) {
            case "00" -> checked(17, random);
            case "01", "02" -> checked(13, random);
            case "402" -> checked(16, random);
            case "410", "417" -> checked(12, random);
            case "11", "13", "15", "17" -> day(random, 0);
            case "7003" -> day(random, 1) + "1459";
            case "20" -> digits(2, random);
            case "3103" -> digits(6, random);
            case "30", "37" -> digits(1 + random.nextInt(8), random);
            case "8003" -> "0" + checked(12, random) + text(random.nextInt(17), random);
            case "10", "21" -> text(1 + random.nextInt(20), random);
            case "91", "92", "99" -> text(1 + random.nextInt(90), random);
            default -> text(1 + random.nextInt(30), random);
        };
    }

    private static String day(Random random, int first) {
        return "%02d%02d%02d"
                .formatted(random.nextInt(100), 1 + random.nextInt(12), first + random.nextInt(28));
    }

    private static String checked(int length, Random random) {
        String digits = digits(length, random);
        return digits + CheckDigit.of(digits);
    }

    private static String digits(int length, Random random) {
        return of("0123456789", length, random);
    }

    private static String text(int length, Random random) {
        return of(CHARACTERS, length, random);
    }

    private static String of(String characters, int length, Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(characters.charAt(random.nextInt(characters.length())));
        }
        return text.toString();
    }
}
