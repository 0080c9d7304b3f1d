package counterbench.oracle;

import java.time.LocalDate;
import java.util.List;

/** People, loose parts, instruments and other paper that is written once. */
final class SetupWriter {

    private final Office office;

    SetupWriter(Office office) {
        this.office = office;
    }

    void write(LocalDate first) {
        Office.PARTS.forEach(p -> office.out.row("people", "name", p, "roles", "parts"));
        Office.TECHNICIANS.forEach(t -> office.out.row("people", "name", t, "roles", "technician"));
        office.out.row("people", "name", Office.WARRANTY, "roles", "warranty");
        parts();
        instruments();
        office.out.row(
                "rates",
                "rate",
                "labour",
                "amount",
                "128.00",
                "currency",
                office.site.currency(),
                "valid_from",
                first.minusDays(40).toString());
        office.out.row(
                "orders",
                "order",
                "PO-1",
                "part",
                "HX-3103",
                "quantity",
                "200",
                "ordered_on",
                first.toString(),
                "expected_on",
                first.plusDays(20).toString(),
                "by",
                "Ines Parr");
        office.out.row(
                "contacts",
                "campaign",
                "HX-26-052",
                "vin",
                "0HXABCDE00TC99999",
                "at",
                office.time(office.at(first, 11, 0)),
                "outcome",
                "declined",
                "reason",
                "sold",
                "by",
                Office.WARRANTY);
    }

    private void parts() {
        part("HX-3092", "Banjo bolt, first kind");
        part("HV-3390", "Valve plug");
        part("HX-0099", "Cable tie");
        for (int i = 1; i <= 8; i++) {
            part("HX-008" + i, "Rag pack " + i);
        }
    }

    private void part(String part, String name) {
        office.out.row("parts", "part", part, "name", name, "unit", "each");
    }

    private void instruments() {
        for (String wrench : List.of("T-1", "T-3", "T-4", "T-5", "T-6", "T-7", "T-8", "T-9")) {
            instrument(wrench, "torque wrench", "N·m");
        }
        instrument("T-2", "torque wrench", "lbf·ft");
        instrument("M-1", "meter", "V");
        instrument("R-1", "tachometer", "rpm");
        instrument("P-1", "gauge", "kPa");
        instrument("H-1", "thermometer", "°C");
        for (String steady : List.of("M-1", "R-1", "P-1", "H-1")) {
            twice(steady, "1", "");
        }
        twice("T-1", "2", "");
        twice("T-2", "", "0.3");
        twice("T-3", "", "0.5");
        twice("T-4", "1", "0.4");
        calibration("T-5", LocalDate.of(2026, 1, 2), LocalDate.of(2026, 6, 30), "2", "");
        calibration("T-5", LocalDate.of(2026, 7, 20), LocalDate.of(2026, 10, 15), "2", "");
        calibration("T-8", LocalDate.of(2026, 1, 2), LocalDate.of(2026, 1, 20), "2", "");
        calibration("T-9", LocalDate.of(2026, 8, 3), LocalDate.of(2027, 8, 3), "2", "");
        LocalDate day = LocalDate.of(2025, 12, 20);
        while (day.getYear() < 2027) {
            calibration("T-6", day, day.plusDays(9), "2", "");
            day = day.plusDays(10);
        }
    }

    private void instrument(String name, String kind, String unit) {
        office.out.row(
                "instruments",
                "instrument",
                name,
                "kind",
                kind,
                "unit",
                unit,
                "serial",
                "W" + name);
    }

    private void twice(String name, String percent, String absolute) {
        LocalDate first = LocalDate.of(2025, 12, 1);
        calibration(name, first, LocalDate.of(2026, 6, 1), percent, absolute);
        calibration(name, LocalDate.of(2026, 5, 28), LocalDate.of(2027, 5, 28), percent, absolute);
    }

    private void calibration(
            String name, LocalDate on, LocalDate due, String percent, String absolute) {
        office.out.row(
                "calibrations",
                "instrument",
                name,
                "calibrated_on",
                on.toString(),
                "due_on",
                due.toString(),
                "certificate",
                "C-" + name + "-" + on,
                "uncertainty_percent",
                percent,
                "uncertainty",
                absolute);
    }
}
