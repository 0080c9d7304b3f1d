package counterbench.oracle;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * {@code OracleMain SEED JOBS FOLDER [contested] [list]}: writes a garage, counts findings by rule.
 */
public final class OracleMain {

    private OracleMain() {}

    /** {@code contested} writes the disputed stories, too; {@code list} prints every finding. */
    public static void main(String[] args) {
        GarageOptions plain = GarageOptions.of(Integer.parseInt(args[1])).scattered(2);
        List<String> words = List.of(args);
        GarageOptions options = words.contains("contested") ? plain.withContested() : plain;
        Garage garage = GarageWriter.write(Long.parseLong(args[0]), options, Path.of(args[2]));
        List<Finding> findings = garage.judge().findings();
        Map<String, Integer> counts = new TreeMap<>();
        Finding.SEVERITIES.keySet().forEach(rule -> counts.put(rule, 0));
        findings.forEach(f -> counts.merge(f.rule(), 1, Integer::sum));
        counts.forEach((rule, count) -> System.out.printf("%6d %s%n", count, rule));
        if (words.contains("list")) {
            findings.forEach(f -> System.out.println(f.line() + "|" + f.why()));
        }
        System.out.println("as of " + garage.asOf() + ", " + findings.size() + " findings");
    }
}
