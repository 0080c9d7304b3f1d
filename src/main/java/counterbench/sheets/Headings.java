package counterbench.sheets;

import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a sheet is which column of its kind. Headings are the words of SHEETS.md in any
 * order and letter case. Besides the kind's own there are {@code site}, for plain facts {@code
 * ref}, for lists of vehicles one heading an attribute; headings that begin with {@code x-} and our
 * own {@code refused_because} are passed over.
 *
 * @param columns where each column of the kind stands in the sheet, from 0; -1 where it does not
 * @param attributes the attributes of a list of vehicles and where they stand
 * @param site where the site stands, or -1
 * @param ref where the paper's own number stands, or -1
 * @param count how many columns there are up to the last heading
 * @param unnamed which of those have no heading
 */
record Headings(
        List<Integer> columns,
        Map<String, Integer> attributes,
        int site,
        int ref,
        int count,
        List<Integer> unnamed) {
    /** The heading that marked copies add. */
    static final String REASON = "refused_because";

    private static final String SITE = "site";
    private static final String REF = "ref";

    /**
     * Reads the row of headings.
     *
     * @param declared the attributes that campaigns declare, which a list of vehicles may have as
     *     headings
     * @throws Refused with every heading that is unknown, twice there or missing
     */
    static Headings of(SheetRow row, Set<String> declared) {
        Sheet sheet = row.at().sheet();
        List<Problem> problems = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        Map<String, Integer> attributes = new HashMap<>();
        List<Integer> unnamed = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            String heading = Canonical.normalised(Text.trimmed(row.cell(i).text()));
            String attribute = attribute(sheet.kind(), heading, declared);
            if (heading.isEmpty()) {
                unnamed.add(i);
            }
            if (passedOver(heading)) {
                continue;
            }
            boolean known = attribute != null || known(sheet.kind()).contains(lower(heading));
            if (!known) {
                problems.add(unknown(sheet, heading, row, declared));
            } else if (put(places, attributes, attribute, heading, i) != null) {
                problems.add(problem(sheet, heading, "is there twice", "remove one of the two"));
            }
        }
        missing(sheet, places, problems);
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return new Headings(
                columns(sheet.kind(), places),
                Map.copyOf(attributes),
                places.getOrDefault(SITE, -1),
                places.getOrDefault(REF, -1),
                width(row),
                List.copyOf(unnamed));
    }

    private static @Nullable Integer put(
            Map<String, Integer> places,
            Map<String, Integer> attributes,
            @Nullable String attribute,
            String heading,
            int i) {
        return attribute != null ? attributes.put(attribute, i) : places.put(lower(heading), i);
    }

    private static @Nullable String attribute(FactKind kind, String heading, Set<String> declared) {
        if (kind != FactKind.VEHICLES || known(kind).contains(lower(heading))) {
            return null;
        }
        Stream<String> inAnyCase = declared.stream().filter(heading::equalsIgnoreCase).sorted();
        return declared.contains(heading) ? heading : inAnyCase.findFirst().orElse(null);
    }

    private static boolean passedOver(String heading) {
        String word = lower(heading);
        return word.isEmpty() || word.startsWith("x-") || word.equals(REASON);
    }

    /** The headings that sheets of a kind may have, attributes apart. */
    private static List<String> known(FactKind kind) {
        Stream<String> own =
                kind.columns().stream()
                        .filter(c -> c.type() != ColumnType.ATTRIBUTES)
                        .map(Column::heading);
        Stream<String> common = kind.takesRef() ? Stream.of(SITE, REF) : Stream.of(SITE);
        return Stream.concat(own, common).toList();
    }

    private static Problem unknown(
            Sheet sheet, String heading, SheetRow row, Set<String> declared) {
        if (row.cells().size() == 1 && (heading.contains(";") || heading.contains("\t"))) {
            return problem(sheet, heading, "is no heading", "separate the columns by commas");
        }
        String why = "is no heading of " + sheet.kind().word();
        if (heading.equalsIgnoreCase(REF)) {
            why += ", which are known by " + String.join(" and ", sheet.kind().key());
        }
        List<String> known = new ArrayList<>(known(sheet.kind()));
        String there = "there are " + String.join(", ", known);
        if (sheet.kind() == FactKind.VEHICLES) {
            why += " and no attribute that a campaign declares";
            there = there(known, declared);
            known.addAll(declared);
        }
        String near = NearMatch.of(heading, known).map(h -> "did you mean " + h + "?").orElse("");
        String todo = near.isEmpty() ? there : near + nearby(sheet.kind(), declared);
        return problem(sheet, heading, why, todo + " (columns of your own begin with x-)");
    }

    private static String nearby(FactKind kind, Set<String> declared) {
        return kind == FactKind.VEHICLES ? " " + attributes(declared) : "";
    }

    private static String there(List<String> known, Set<String> declared) {
        return "there are " + String.join(", ", known) + "; " + attributes(declared);
    }

    private static String attributes(Set<String> declared) {
        return declared.isEmpty()
                ? "no loaded campaign declares attributes"
                : "attributes are " + String.join(", ", new TreeSet<>(declared));
    }

    private static void missing(Sheet sheet, Map<String, Integer> places, List<Problem> problems) {
        FactKind kind = sheet.kind();
        List<String> required =
                kind.columns().subList(0, kind.requiredCount()).stream()
                        .map(Column::heading)
                        .toList();
        String absent =
                required.stream()
                        .filter(h -> !places.containsKey(h))
                        .collect(Collectors.joining(", "));
        if (!absent.isEmpty()) {
            problems.add(
                    new Problem(
                            sheet.shown(),
                            "has no heading " + absent,
                            kind.word() + " need " + String.join(", ", required)));
        }
    }

    private static Problem problem(Sheet sheet, String heading, String because, String todo) {
        return new Problem(sheet.shown() + ", heading " + Text.quoted(heading), because, todo);
    }

    private static List<Integer> columns(FactKind kind, Map<String, Integer> places) {
        return kind.columns().stream().map(c -> places.getOrDefault(c.heading(), -1)).toList();
    }

    private static int width(SheetRow row) {
        int width = row.cells().size();
        while (width > 0 && !row.at().sheet().isCsv() && row.cell(width - 1).isBlank()) {
            width--;
        }
        return width;
    }

    private static String lower(String heading) {
        return heading.toLowerCase(Locale.ROOT);
    }
}
