package counterbench.oracle;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Opens a story: picks the vehicle, lists it, and makes its number wrong where the fault says so.
 */
final class VehicleWriter {

    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";

    private final Office office;
    private int built;

    VehicleWriter(Office office) {
        this.office = office;
    }

    JobStory open(Pack pack, Instant opened, Optional<Fault> fault) {
        LocalDate day = office.clock.day(opened);
        Office.Visit before = office.lastVisit.get(pack.campaign());
        boolean again =
                fault.filter(f -> f == Fault.DONE_TWICE || f == Fault.REDO).isPresent()
                        && before != null
                        && before.day().isBefore(day);
        String vin = again ? before.vin() : vin(fault);
        Map<String, String> real = again ? before.attributes() : attributes(pack);
        JobStory story = new JobStory(office.next("J-"), pack, vin, real, opened, fault);
        if (again) {
            office.lastVisit.remove(pack.campaign());
            story.redoOf = story.is(Fault.REDO) ? before.job() : "";
        } else if (hasList(pack) && !story.is(Fault.NOT_LISTED)) {
            list(story);
        }
        return story;
    }

    static boolean hasList(Pack pack) {
        return !pack.campaign().equals("HX-26-052");
    }

    void headings(List<Pack> packs) {
        for (Pack pack : packs) {
            if (hasList(pack)) {
                String attributes = String.join(" ", answers(pack).keySet());
                office.out.headings(
                        "vehicles-" + pack.campaign(), "campaign vin model " + attributes);
            }
        }
    }

    private void list(JobStory story) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("campaign", story.pack.campaign());
        cells.put("vin", story.vin);
        cells.put("model", "Hauler " + office.dice.between(2, 6));
        cells.putAll(story.real);
        String odd = office.dice.pick(List.copyOf(story.real.keySet()));
        if (story.is(Fault.ATTRIBUTE_MISSING)) {
            cells.remove(odd);
        } else if (story.is(Fault.ATTRIBUTE_OTHER_CASE)) {
            cells.put(odd, cells.get(odd).toUpperCase(Locale.ROOT));
        }
        String[] row =
                cells.entrySet().stream()
                        .flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue()))
                        .toArray(String[]::new);
        office.out.row("vehicles-" + story.pack.campaign(), row);
    }

    private Map<String, String> attributes(Pack pack) {
        Map<String, String> real = new LinkedHashMap<>();
        answers(pack).forEach((name, answers) -> real.put(name, office.dice.pick(answers)));
        return real;
    }

    private static Map<String, List<String>> answers(Pack pack) {
        return switch (pack.campaign()) {
            case "HX-26-031" ->
                    ordered(
                            "transmission",
                            List.of("automatic", "manual"),
                            "axle",
                            List.of("front", "rear"));
            case "HX-26-044" -> Map.of("engine", List.of("six", "eight"));
            case "HX-26-060" -> Map.of("body", List.of("van", "bus"));
            default -> Map.of();
        };
    }

    private static Map<String, List<String>> ordered(
            String one, List<String> first, String other, List<String> second) {
        Map<String, List<String>> map = new LinkedHashMap<>();
        map.put(one, first);
        map.put(other, second);
        return map;
    }

    /** Begins with 0, which no maker has. */
    private String vin(Optional<Fault> fault) {
        StringBuilder vin = new StringBuilder("0HX");
        for (int i = 0; i < 5; i++) {
            vin.append(LETTERS.charAt(office.dice.between(0, LETTERS.length() - 1)));
        }
        vin.append("0TC").append("%06d".formatted(++built));
        vin.setCharAt(8, Vin.checkDigit(vin.toString()));
        if (fault.isPresent()) {
            spoil(vin, fault.get());
        }
        return vin.toString();
    }

    private void spoil(StringBuilder vin, Fault fault) {
        switch (fault) {
            case VIN_SHORT -> vin.setLength(office.dice.between(14, 16));
            case VIN_LETTER -> vin.setCharAt(4, office.dice.pick(List.of('I', 'O', 'Q')));
            case VIN_DIGIT, VIN_ANY_DIGIT -> vin.setCharAt(8, vin.charAt(8) == '7' ? '3' : '7');
            default -> {}
        }
    }
}
